// SPDX-License-Identifier: MIT
#include "pipward/seed/unknown_cross.h"

#include "pipward/value/complaint.h"

namespace pipward::seed {

Finding unknown_cross(const std::string& code) {
    return about_parameter("crosses", code, say("The book has no cross of this name."),
                           say("Name crosses by their codes."));
}

}  // namespace pipward::seed
