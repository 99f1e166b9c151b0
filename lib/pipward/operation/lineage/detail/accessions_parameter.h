// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/operation/declare/detail/declare.h"
#include "pipward/place/accession_choice.h"

namespace pipward::operation::detail {

template <class Request>
Bound<Request> accessions_parameter(std::string Request::*field) {
    return parameter(field, "accessions", "Accessions",
                     "Names of accessions or blends, or labels of trees, separated by commas; the parents of "
                     "the season's crosses where left out.");
}

}  // namespace pipward::operation::detail
