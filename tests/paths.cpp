// SPDX-License-Identifier: MIT
#include "paths.h"

namespace pipward::testing {

std::string project_file(const std::string& path) {
    return PIPWARD_SOURCE "/" + path;
}

std::string oracle_file(const std::string& name) {
    return project_file("tests/oracles/" + name);
}

std::string regression_file(const std::string& name) {
    return project_file("tests/regression/" + name);
}

std::string sample_book() {
    return project_file("sample-gpkg/larkfold.gpkg");
}

std::string shared_file(const std::string& path) {
    return project_file("../shared/data/" + path);
}

}  // namespace pipward::testing
