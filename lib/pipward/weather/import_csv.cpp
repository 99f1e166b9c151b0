// SPDX-License-Identifier: MIT
#include "pipward/weather/import_csv.h"

#include "pipward/weather/table_import.h"

namespace pipward::weather {

WeatherImport import_csv(std::string_view text, const WeatherFileOptions& options) {
    return import_table(read_csv(text, options.file), options, false);
}

}  // namespace pipward::weather
