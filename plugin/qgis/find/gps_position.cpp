// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/gps_position.h"

#include <qgsapplication.h>
#include <qgsgpsconnection.h>
#include <qgsgpsconnectionregistry.h>

namespace pipward::desktop {

std::optional<place::LonLat> gps_position() {
    for (const auto* connection : QgsApplication::gpsConnectionRegistry()->connectionList()) {
        const auto position = connection->currentGPSInformation();
        if (connection->status() == QgsGpsConnection::GPSDataReceived && position.isValid()) {
            return place::LonLat{position.longitude, position.latitude};
        }
    }
    return std::nullopt;
}

}  // namespace pipward::desktop
