// SPDX-License-Identifier: MIT
#pragma once

#include <proj.h>

#include <memory>

/// PROJ's own things, let go of when done.
namespace pipward::place::detail {

struct ContextCloser {
    void operator()(PJ_CONTEXT* context) const { proj_context_destroy(context); }
};
struct ProjectionCloser {
    void operator()(PJ* projection) const { proj_destroy(projection); }
};
using Context = std::unique_ptr<PJ_CONTEXT, ContextCloser>;
using ProjectionHandle = std::unique_ptr<PJ, ProjectionCloser>;

/// One that prints nothing of its own.
inline Context quiet_context() {
    Context context(proj_context_create());
    proj_log_level(context.get(), PJ_LOG_NONE);
    return context;
}

}  // namespace pipward::place::detail
