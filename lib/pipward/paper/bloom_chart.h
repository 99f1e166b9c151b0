// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/cross/plan.h"
#include "pipward/paper/chart_marks.h"

namespace pipward::paper {

/// One accession's bloom, as the chart shows it.
struct BloomBar {
    std::string name;                                                ///< of the accession
    Day first;                                                       ///< first bloom, median
    bloom::DayQuantiles full;                                        ///< full bloom
    Day end;                                                         ///< end of bloom, median
    bloom::NeedSource source = bloom::NeedSource::own_observations;  ///< of what is known of its needs
    int observations = 0;                                            ///< of its own, 0 or more
    bool seed_parent = false;                                        ///< of a wanted cross
    bool pollen_parent = false;  ///< of a wanted cross, or a donor of pollen work

    /// Whether a cross of the plan wants it.
    bool is_wanted() const { return seed_parent || pollen_parent; }
};

inline constexpr int few_borrowed = 8;  ///< common practice, no source

/// What the chart shows; no place of anything in it.
struct BloomChart {
    Sentence title;              ///< of the picture, for whoever cannot see it
    Day as_of;                   ///< the day of the forecast
    Day from;                    ///< a Monday
    Day to;                      ///< a Sunday
    std::vector<BloomBar> bars;  ///< from the top down
    int left_out = 0;            ///< accessions without a bar
};

/// One bar an accession, from the window that stands for it: parents of the plan's crosses first, then by
/// median full bloom and name. Accessions that only borrow their window and are wanted for no cross are left
/// out where they are more than `few_borrowed`: an orchard may hold a thousand such seedlings. Without
/// windows there are no bars and the chart shows as_of's week.
BloomChart bloom_chart_of(const bloom::BloomForecast& forecast, const cross::SeasonPlan& plan);

/// Sets `from` and `to` to whole weeks around every bar, and around as_of where it is within three weeks of
/// them.
void span_bars(BloomChart& chart);

/// How the chart is laid out.
enum class ChartShape {
    wide,     ///< name, bar and days side by side: desktop and paper
    stacked,  ///< the bar below its name: a phone
};

/// How the chart is written into a file or a page.
struct BloomChartLayout {
    ChartShape shape = ChartShape::wide;  ///< see ChartShape
    std::string id = "bloom";             ///< unique in its page; letters, digits and hyphens
    bool with_style = true;               ///< carries its own style sheet: a file of its own needs it
    bool with_key = true;                 ///< explains its signs below the bars
};

/// The chart as one SVG element that is also a whole SVG file: no script, nothing from outside, light and
/// dark. Thin line: first bloom to end of bloom. Box: full bloom, p10 to p90, whole days. Tick: its median,
/// in the middle of the day.
std::string bloom_chart_svg(const BloomChart& chart, const BloomChartLayout& layout = {},
                            const Wording& wording = in_english);

/// The style sheet that `with_style` leaves out, for pages with several charts.
std::string_view bloom_chart_style();

/// "12–25 Apr", "28 Apr – 3 May".
Sentence day_range_text(Day from, Day to);

/// One sign of the chart and what it means.
struct ChartSign {
    ChartMarks marks;  ///< in a box of chart_sign_width x chart_sign_height; empty for a sign in words
    Sentence words;    ///< not escaped
};
inline constexpr int chart_sign_width = 44;   ///< drawing units
inline constexpr int chart_sign_height = 20;  ///< drawing units
/// In the order of the key.
std::vector<ChartSign> bloom_chart_signs();

}  // namespace pipward::paper
