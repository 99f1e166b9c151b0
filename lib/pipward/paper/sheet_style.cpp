// SPDX-License-Identifier: MIT
#include "pipward/paper/bloom_chart.h"
#include "pipward/paper/detail/sheet_sections.h"

namespace pipward::paper::detail {
namespace {

constexpr std::string_view colours =
    R"(:root{color-scheme:light dark;--bg:#fff;--text:#1d2320;--faint:#505b55;
--rule:#c3ccc6;--edge:#6d2f5f;--link:#5a2450;--alert:#8a1c1c;--warn:#8a5000}
@media screen and (prefers-color-scheme:dark){:root{--bg:#161b18;--text:#e9eeeb;--faint:#aebab3;
--rule:#3a443e;--edge:#e3b5d5;--link:#edc6e1;--alert:#ff9d94;--warn:#f2b04d}}
)";

constexpr std::string_view page = R"(*{box-sizing:border-box}
body{margin:0 auto;padding:1rem;max-width:62rem;background:var(--bg);color:var(--text);
font:1rem/1.45 system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans",sans-serif;overflow-wrap:anywhere}
h1{font-size:1.9rem;line-height:1.15;margin:.2rem 0}
h2{font-size:1.35rem;line-height:1.2;margin:2.2rem 0 .6rem;padding-top:.5rem;border-top:4px solid var(--edge)}
h3{font-size:1.05rem;margin:1rem 0 .3rem}
p{margin:.35rem 0}
.orchard{font-size:1.2rem}
.quiet{color:var(--faint)}
.note{display:inline-block;border:2px dashed var(--warn);padding:.3rem .6rem;margin:.5rem 0}
a{color:var(--link)}
nav ul{list-style:none;display:flex;flex-wrap:wrap;gap:.2rem 1.1rem;margin:.8rem 0;padding:0}
nav a{display:inline-block;padding:.35rem 0}
time,.short{white-space:nowrap}
.tag{display:inline-block;border:1px solid var(--faint);border-radius:.3rem;padding:0 .4rem;
font-weight:600;max-width:100%}
.tag.missed{border:3px double var(--alert);color:var(--alert)}
.tag.now{border:2px solid var(--warn);color:var(--warn)}
.tag.soon{border:2px dashed var(--warn);color:var(--warn)}
ul.due{list-style:none;margin:.2rem 0;padding:0}
ul.due li{display:flex;flex-wrap:wrap;gap:.1rem 1rem;padding:.4rem 0;border-bottom:1px solid var(--rule)}
.when{flex:0 0 14rem}
.what{flex:1 1 18rem}
ul.key{list-style:none;margin:.4rem 0;padding:0;display:grid;grid-template-columns:repeat(auto-fit,minmax(min(20rem,100%),1fr));gap:.35rem 1.5rem}
ul.key li{display:flex;gap:.6rem;align-items:flex-start}
ul.key svg{flex:none;margin-top:.1rem}
figure{margin:1rem 0}
figcaption{font-weight:600;margin-bottom:.3rem}
figure svg{display:block;width:100%;height:auto}
.narrow{display:none}
summary{cursor:pointer;font-weight:600;padding:.4rem 0}
.findings,.care{padding-left:1.1rem}
.findings li,.care li{margin:.45rem 0}
)";

constexpr std::string_view tables =
    R"(table{width:100%;border-collapse:collapse;table-layout:fixed;margin:.5rem 0}
caption{text-align:left;color:var(--faint);padding-bottom:.3rem}
th,td{text-align:left;vertical-align:top;padding:.4rem .7rem .4rem 0;font-weight:400}
thead th{font-weight:600;border-bottom:2px solid var(--text);vertical-align:bottom;overflow-wrap:normal}
tbody{border-bottom:1px solid var(--rule)}
.code,.pair,.way{display:block}
.from{white-space:nowrap}
.pips{letter-spacing:.02em;white-space:nowrap;display:block}
.below td{padding-top:0;color:var(--faint)}
.below p{margin:.1rem 0}
.others ul{display:inline;list-style:none;margin:0;padding:0}
.others li{display:inline}
.others li+li::before{content:"; "}
.others li:first-child::before{content:" "}
.blank{border-bottom:1px dotted var(--faint);min-height:1.5rem;min-width:4rem}
.address{display:block;font-weight:600}
.tray{table-layout:fixed;break-inside:avoid}
.tray td{display:table-cell;border:1px solid var(--faint);padding:.3rem;font-size:.85rem;text-align:center}
input[type=checkbox]{width:1.35rem;height:1.35rem;margin:0;accent-color:var(--edge)}
)";

constexpr std::string_view phone = R"(@media screen and (max-width:44rem){
.wide{display:none}.narrow{display:block}
.when{flex-basis:100%}
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
table,caption,tbody,tr,th,td{display:block;width:auto}
tbody{position:relative;border:1px solid var(--rule);border-radius:.5rem;padding:.6rem .8rem;margin:0 0 .8rem}
tbody tr{display:flex;flex-direction:column}
tbody th{order:-1;font-size:1.05rem;padding:0 0 .4rem}
td{display:grid;grid-template-columns:6.7rem minmax(0,1fr);gap:.5rem;padding:.2rem 0}
td::before{content:attr(data-label);color:var(--faint)}
td.empty{display:none}
td.tick,.below td{display:block}
td.tick{order:-2;position:absolute;right:.6rem;top:.5rem;padding:0}
td.tick::before,.below td::before{content:none}
td.tick~th{padding-right:2.4rem}
td.tick input{width:1.7rem;height:1.7rem}
.below td{padding:.4rem 0 0}
.tray{display:table}.tray tbody{display:table-row-group;border:0}.tray tbody tr{display:table-row}
.tray td::before{content:none}
}
)";

constexpr std::string_view paper =
    R"(@page{size:A4 portrait;margin:14mm 13mm;@bottom-right{content:counter(page) " / " counter(pages);font:9pt sans-serif}}
@media print{
body{max-width:none;padding:0;font-size:9.5pt;line-height:1.35}
nav{display:none}
h1{font-size:20pt}h2{font-size:13pt;margin-top:6mm;break-after:avoid}h3{font-size:10.5pt;break-after:avoid}
.tag{color:#000;border-color:#000}
.quiet,.below td,caption{color:#333}
figure,tbody,li,.key,#sure,#care{break-inside:avoid}
figcaption,caption,h2+p{break-after:avoid}
thead{display:table-header-group;break-after:avoid}
caption+thead+tbody{break-before:avoid}
summary{list-style:none}
th,td{padding:1mm 2mm 1mm 0}
.when{flex-basis:48mm}
input[type=checkbox]{width:4.5mm;height:4.5mm}
}
)";

}  // namespace

std::string sheet_style() {
    std::string style;
    for (const auto part : {colours, page, tables, phone, paper, bloom_chart_style()}) {
        style += part;
    }
    return style;
}

}  // namespace pipward::paper::detail
