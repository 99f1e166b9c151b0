// SPDX-License-Identifier: MIT
#include "pipward/place/transformation.h"

#include <fmt/format.h>
#include <proj.h>

#include <algorithm>
#include <cmath>

#include "pipward/place/detail/proj_context.h"
#include "pipward/place/earth.h"

namespace pipward::place {
namespace {

struct ListCloser {
    void operator()(PJ_OBJ_LIST* list) const { proj_list_destroy(list); }
};
struct FactoryCloser {
    void operator()(PJ_OPERATION_FACTORY_CONTEXT* factory) const {
        proj_operation_factory_context_destroy(factory);
    }
};
using detail::Context;
using detail::ProjectionHandle;
using detail::quiet_context;
using List = std::unique_ptr<PJ_OBJ_LIST, ListCloser>;
using Factory = std::unique_ptr<PJ_OPERATION_FACTORY_CONTEXT, FactoryCloser>;

struct Reach {
    double west = 180;
    double south = 90;
    double east = -180;
    double north = -90;
};

Reach box_around(const std::string& crs, std::span<const MapPoint> points) {
    const ToEarth to_earth(crs);
    Reach box;
    for (const auto& point : points) {
        if (const auto place = to_earth(point)) {
            box.west = std::min(box.west, place->lon);
            box.east = std::max(box.east, place->lon);
            box.south = std::min(box.south, place->lat);
            box.north = std::max(box.north, place->lat);
        }
    }
    return box;
}

/// The ways from one system to the other, the best first; those that need a file we lack only if `all`.
List ways(PJ_CONTEXT* context, const PJ* from, const PJ* to, const Reach& box, bool all) {
    const Factory factory(proj_create_operation_factory_context(context, nullptr));
    if (box.west <= box.east) {
        proj_operation_factory_context_set_area_of_interest(context, factory.get(), box.west, box.south,
                                                            box.east, box.north);
    }
    proj_operation_factory_context_set_spatial_criterion(context, factory.get(),
                                                         PROJ_SPATIAL_CRITERION_PARTIAL_INTERSECTION);
    proj_operation_factory_context_set_grid_availability_use(
        context, factory.get(),
        all ? PROJ_GRID_AVAILABILITY_IGNORED : PROJ_GRID_AVAILABILITY_DISCARD_OPERATION_IF_MISSING_GRID);
    return List(proj_create_operations(context, from, to, factory.get()));
}

ProjectionHandle first_of(PJ_CONTEXT* context, const List& list) {
    const bool any = list != nullptr && proj_list_get_count(list.get()) > 0;
    return any ? ProjectionHandle(proj_list_get(context, list.get(), 0)) : nullptr;
}

std::optional<Metres> accuracy_of(PJ_CONTEXT* context, const PJ* way) {
    const double metres = proj_coordoperation_get_accuracy(context, way);
    return metres >= 0 ? std::optional{Metres{metres}} : std::nullopt;
}

std::string missing_grid_of(PJ_CONTEXT* context, const PJ* way) {
    for (int i = 0; i < proj_coordoperation_get_grid_used_count(context, way); ++i) {
        const char* name = nullptr;
        int available = 0;
        proj_coordoperation_get_grid_used(context, way, i, &name, nullptr, nullptr, nullptr, nullptr, nullptr,
                                          &available);
        if (available == 0 && name != nullptr) {
            return name;
        }
    }
    return {};
}

TransformationFacts facts_of(PJ_CONTEXT* context, const PJ* way) {
    TransformationFacts facts;
    facts.name = proj_get_name(way);
    facts.accuracy = accuracy_of(context, way);
    facts.ballpark = proj_coordoperation_has_ballpark_transformation(context, way) != 0;
    return facts;
}

void add_missed(PJ_CONTEXT* context, const PJ* best, TransformationFacts& facts) {
    const auto grid = best == nullptr ? std::string{} : missing_grid_of(context, best);
    const auto accuracy = best == nullptr ? std::nullopt : accuracy_of(context, best);
    if (!grid.empty() && accuracy && (!facts.accuracy || accuracy->value < facts.accuracy->value)) {
        facts.missed_accuracy = accuracy;
        facts.missed_grid = grid;
    }
}

}  // namespace

struct Transformation::Parts {
    Context context = quiet_context();
    ProjectionHandle way{};
    bool same = false;
    TransformationFacts facts{};
};

Transformation::Transformation(const std::string& from, const std::string& to,
                               std::span<const MapPoint> around)
    : parts_(std::make_unique<Parts>()) {
    auto* context = parts_->context.get();
    const ProjectionHandle source(proj_create(context, from.c_str()));
    const ProjectionHandle target(proj_create(context, to.c_str()));
    if (!source || !target) {
        return;
    }
    if (proj_is_equivalent_to_with_ctx(context, source.get(), target.get(),
                                       PJ_COMP_EQUIVALENT_EXCEPT_AXIS_ORDER_GEOGCRS) != 0) {
        parts_->same = true;
        parts_->facts.accuracy = Metres{};
        return;
    }
    const auto box = box_around(from, around);
    const auto way = first_of(context, ways(context, source.get(), target.get(), box, false));
    if (way) {
        parts_->facts = facts_of(context, way.get());
        add_missed(context, first_of(context, ways(context, source.get(), target.get(), box, true)).get(),
                   parts_->facts);
        parts_->way.reset(proj_normalize_for_visualization(context, way.get()));
    }
}
Transformation::~Transformation() = default;
Transformation::Transformation(Transformation&&) noexcept = default;
Transformation& Transformation::operator=(Transformation&&) noexcept = default;

std::optional<MapPoint> Transformation::operator()(const MapPoint& point) const {
    if (parts_->same) {
        return point;
    }
    if (!parts_->way || !std::isfinite(point.x) || !std::isfinite(point.y)) {
        return std::nullopt;
    }
    const PJ_COORD there = proj_trans(parts_->way.get(), PJ_FWD, proj_coord(point.x, point.y, 0, HUGE_VAL));
    const bool on_map = std::isfinite(there.xy.x) && std::isfinite(there.xy.y);
    return on_map ? std::optional{MapPoint{there.xy.x, there.xy.y, point.height}} : std::nullopt;
}

bool Transformation::is_possible() const {
    return parts_->same || parts_->way != nullptr;
}

const TransformationFacts& Transformation::facts() const {
    return parts_->facts;
}

std::string system_name(const std::string& crs) {
    const auto context = quiet_context();
    const ProjectionHandle system(proj_create(context.get(), crs.c_str()));
    if (!system || proj_is_crs(system.get()) == 0) {
        return {};
    }
    const std::string name = proj_get_name(system.get());
    const char* authority = proj_get_id_auth_name(system.get(), 0);
    const char* code = proj_get_id_code(system.get(), 0);
    return authority == nullptr || code == nullptr ? name : fmt::format("{} ({}:{})", name, authority, code);
}

bool has_ellipsoidal_heights(const std::string& crs) {
    const auto context = quiet_context();
    const ProjectionHandle system(proj_create(context.get(), crs.c_str()));
    return system != nullptr && proj_get_type(system.get()) == PJ_TYPE_GEOGRAPHIC_3D_CRS;
}

}  // namespace pipward::place
