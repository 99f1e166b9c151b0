// SPDX-License-Identifier: MIT
#include "pipward/seed/trial.h"

#include <algorithm>
#include <map>

#include "pipward/seed/detail/trial_pair.h"

namespace pipward::seed {
namespace {

struct ArmKey {
    std::string treatment;
    std::string medium;

    auto operator<=>(const ArmKey&) const = default;
};

void add_lot(TrialArm& arm, const LotCourse& course) {
    arm.points = arm.lots.empty() ? course.points : std::vector<GerminationPoint>{};
    arm.lots.push_back(course.lot);
    arm.seeds += course.lot->seeds;
    arm.germinated += *course.germinated;
    arm.times.germinated.insert(arm.times.germinated.end(), course.times.germinated.begin(),
                                course.times.germinated.end());
    arm.times.censored.insert(arm.times.censored.end(), course.times.censored.begin(),
                              course.times.censored.end());
}

void calculate(TrialArm& arm) {
    arm.interval = math::wilson_interval(std::min(arm.germinated, arm.seeds), arm.seeds);
    arm.half_coolbear = days_to_half(arm.points, HalfRule::coolbear);
    arm.half_farooq = days_to_half(arm.points, HalfRule::farooq);
    arm.mean_days = mean_germination_days(arm.points);
}

double share_of(const TrialArm& arm) {
    return math::HitsOf{arm.germinated, arm.seeds}.share();
}

Trial trial_of(const std::string& cross, std::map<ArmKey, TrialArm> arms) {
    Trial trial{cross, {}, {}};
    for (auto& [key, arm] : arms) {
        calculate(arm);
        trial.arms.push_back(std::move(arm));
    }
    std::ranges::stable_sort(trial.arms, std::ranges::greater{}, share_of);
    trial.pairs = detail::compare_arms(trial.arms);
    return trial;
}

}  // namespace

std::vector<Trial> trials_of(const Orchard& orchard, Day as_of) {
    std::map<std::string, std::map<ArmKey, TrialArm>> crosses;
    for (const auto& course : lot_courses(orchard, as_of)) {
        if (course.germinated && course.lot->seeds > 0) {
            const ArmKey key{course.lot->treatment.value_or(""), course.lot->medium.value_or("")};
            auto& arm = crosses[course.lot->cross][key];
            arm.treatment = key.treatment;
            arm.medium = key.medium;
            add_lot(arm, course);
        }
    }
    std::vector<Trial> trials;
    for (auto& [cross, arms] : crosses) {
        if (arms.size() > 1) {
            trials.push_back(trial_of(cross, std::move(arms)));
        }
    }
    return trials;
}

Sentence arm_words(const TrialArm& arm) {
    const auto treatment = arm.treatment.empty() ? say("no treatment") : say("“{}”", arm.treatment);
    return arm.medium.empty() ? treatment : say("{} in {}", treatment, arm.medium);
}

}  // namespace pipward::seed
