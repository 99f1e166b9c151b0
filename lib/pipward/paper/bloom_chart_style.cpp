// SPDX-License-Identifier: MIT
#include "pipward/paper/bloom_chart.h"

namespace pipward::paper {

// Plum and ochre stay apart for every common kind of colour blindness and differ in lightness; each mark also
// has a shape of its own, so a copy in black and white reads the same.
std::string_view bloom_chart_style() {
    return R"(.bloom-chart{--paper:#fff;--ink:#1d2320;--quiet:#505b55;--grid:#d5dbd7;--month:#8d9891;
--petal:#e3c6da;--stem:#6d2f5f;--tick:#34102d;--now:#8a5000;
font:14px system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans",sans-serif;fill:var(--ink)}
.bloom-chart.stacked{font-size:16px}
.bloom-chart .paper{fill:var(--paper)}
.bloom-chart .name,.bloom-chart .days{font-weight:600}
.bloom-chart .quiet{fill:var(--quiet)}
.bloom-chart .over{stroke:var(--paper);stroke-width:4;stroke-linejoin:round}
.bloom-chart .grid{stroke:var(--grid);stroke-width:1}
.bloom-chart .month{stroke:var(--month);stroke-width:1}
.bloom-chart .life{stroke:var(--stem);stroke-width:2}
.bloom-chart .band{fill:var(--petal);stroke:var(--stem);stroke-width:1.5}
.bloom-chart .lent{fill:var(--paper);stroke-dasharray:4 2.5}
.bloom-chart .median{stroke:var(--tick);stroke-width:3.5}
.bloom-chart line.as-of{stroke:var(--now);stroke-width:2;stroke-dasharray:7 3 2 3}
.bloom-chart text.as-of{fill:var(--now);font-weight:600}
@media screen and (prefers-color-scheme:dark){.bloom-chart{--paper:#161b18;--ink:#e9eeeb;--quiet:#aebab3;
--grid:#333c37;--month:#6b776f;--petal:#6b3a5f;--stem:#e3b5d5;--tick:#fff;--now:#f2b04d}}
)";
}

}  // namespace pipward::paper
