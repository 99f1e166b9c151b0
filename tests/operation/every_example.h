// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "operation/sample_copy.h"
#include "pipward/operation/operation.h"

/// Every declared example, to be run on a copy of the sample.
namespace pipward::testing {

struct ExampleOf {
    const operation::Operation* operation;
    const operation::Example* example;
};

inline std::vector<ExampleOf> all_examples() {
    std::vector<ExampleOf> all;
    for (const auto& operation : operation::operations()) {
        for (const auto& example : operation->examples()) {
            all.push_back({operation.get(), &example});
        }
    }
    return all;
}

inline std::string value_in(const SampleCopy& sample, const operation::Example& example,
                            const std::string& value) {
    if (value == "BOOK") {
        return sample.book();
    }
    if (value == "NEW") {
        return sample.path("new.gpkg");
    }
    return value == "FILE" ? sample.put("file.csv", example.file) : value;
}

inline operation::Form form_of(const SampleCopy& sample, const operation::Example& example) {
    operation::Form form;
    for (const auto& [key, value] : example.values) {
        form[key] = value_in(sample, example, value);
    }
    return form;
}

/// As part of a test's name.
inline std::string name_of(const ::testing::TestParamInfo<ExampleOf>& info) {
    std::string name = info.param.operation->about().id + "_" + std::to_string(info.index);
    std::ranges::replace(name, '-', '_');
    return name;
}

}  // namespace pipward::testing
