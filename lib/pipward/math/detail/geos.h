// SPDX-License-Identifier: MIT
#pragma once

#include <geos_c.h>

#include <memory>
#include <span>
#include <string>
#include <vector>

#include "pipward/math/plane_point.h"

/// Inside of the room: what GEOS makes, given back when it goes. Only sources of math/ include this.
namespace pipward::math::detail {

/// Gives back what belongs to a context.
template <auto Close>
struct Closer {
    GEOSContextHandle_t context = nullptr;

    template <class Thing>
    void operator()(Thing* thing) const {
        Close(context, thing);
    }
};
using Geometry = std::unique_ptr<GEOSGeometry, Closer<GEOSGeom_destroy_r>>;
using Tree = std::unique_ptr<GEOSSTRtree, Closer<GEOSSTRtree_destroy_r>>;

/// GEOS for one owner: its contexts are not shared between threads. Making one takes less than 0.1 us.
class Geos {
  public:
    Geos();

    GEOSContextHandle_t context() const { return context_.get(); }

    /// Throws std::logic_error with what GEOS says: coordinates that are no finite numbers, or a mistake of
    /// ours.
    Geometry own(GEOSGeometry* made) const;
    Geometry point(PlanePoint at) const;
    /// Of one point or more; one makes a point.
    Geometry line(std::span<const PlanePoint> points) const;
    Geometry box(const Box& box) const;
    Tree tree() const;
    /// The answer of a predicate.
    bool yes(char answer) const;
    /// The answer of a measurement, which says by `done` whether it could be made.
    double measured(int done, double value) const;

  private:
    [[noreturn]] void fail() const;

    struct ContextCloser {
        void operator()(GEOSContextHandle_HS* context) const { GEOS_finish_r(context); }
    };
    std::unique_ptr<GEOSContextHandle_HS, ContextCloser> context_;
    std::unique_ptr<std::string> said_;
};

/// At least one point; whoever makes a geometry of it gives it away.
GEOSCoordSequence* sequence_of(const Geos& geos, std::span<const PlanePoint> points);

/// Of a point, a line or a ring, its points.
std::vector<PlanePoint> points_of(const Geos& geos, const GEOSGeometry* line);

}  // namespace pipward::math::detail
