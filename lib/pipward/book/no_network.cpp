// SPDX-License-Identifier: MIT
#include "pipward/book/detail/no_network.h"

#include <cpl_conv.h>
#include <cpl_http.h>
#include <cpl_vsi.h>

#include "pipward/book/detail/location.h"
#include "pipward/book/detail/ogr_session.h"

namespace pipward::book::detail {
namespace {

CPLHTTPResult* refuse(const char*, CSLConstList, GDALProgressFunc, void*, CPLHTTPFetchWriteFunc, void*,
                      void*) {
    auto* result = static_cast<CPLHTTPResult*>(CPLCalloc(1, sizeof(CPLHTTPResult)));
    result->nStatus = 1;
    result->pszErrBuf = CPLStrdup("the network is not asked");
    return result;
}

}  // namespace

NoNetwork::NoNetwork() {
    CPLHTTPPushFetchCallback(refuse, nullptr);
}

NoNetwork::~NoNetwork() {
    CPLHTTPPopFetchCallback();
}

void refuse_what_is_not_at_hand(const std::string& location) {
    if (lies_in_network(location)) {
        throw access_error(location, say("This lies in the network, and no file is fetched from there."),
                           say("Fetch the file first and name it where it then lies."));
    }
    VSIStatBufL status{};
    if (VSIStatL(location.c_str(), &status) == 0 && !VSI_ISREG(status.st_mode) &&
        !VSI_ISDIR(status.st_mode)) {
        throw access_error(location, say("This is no file but a pipe or a device."),
                           say("Save its content as a file and name that."));
    }
}

}  // namespace pipward::book::detail
