// SPDX-License-Identifier: MIT
#include "pipward/math/distributions.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/hypergeometric.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

namespace pipward::math {
namespace {

namespace boosted = boost::math;

}  // namespace

double normal_below(double z) {
    return boosted::cdf(boosted::normal(), z);
}

double normal_quantile(double chance) {
    return boosted::quantile(boosted::normal(), chance);
}

// Plain arithmetic: numbering asks it for every tree and every position near it.
double normal_density(double off, double sd) {
    constexpr double root_of_two_pi = 2.5066282746310002;
    const double z = off / sd;
    return std::exp(-0.5 * z * z) / (sd * root_of_two_pi);
}

double student_quantile(double chance, double freedom) {
    return boosted::quantile(boosted::students_t(freedom), chance);
}

double beta_quantile(double chance, double a, double b) {
    return boosted::quantile(boosted::beta_distribution<>(a, b), chance);
}

double chi_square_above(double value, double freedom) {
    return boosted::cdf(boosted::complement(boosted::chi_squared(freedom), value));
}

double binomial_fewer(int wanted, int of, double share) {
    return wanted <= 0 ? 0.0 : wanted > of ? 1.0 : boosted::cdf(boosted::binomial(of, share), wanted - 1);
}

double hypergeometric(int hits, int marked, int drawn, int all) {
    const auto whole = [](int number) { return static_cast<unsigned>(number); };
    return boosted::pdf(boosted::hypergeometric(whole(marked), whole(drawn), whole(all)), whole(hits));
}

}  // namespace pipward::math
