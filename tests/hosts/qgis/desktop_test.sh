#!/bin/sh
# SPDX-License-Identifier: GPL-2.0-or-later
# desktop_test.sh MODULE SCENARIO SAMPLE SCRATCH [LANGUAGE]: the scenario in the real desktop under a virtual display.
set -eu
module=$1 scenario=$2 sample=$3 scratch=$4 language=${5:-en}
rm -rf "$scratch" && mkdir -p "$scratch/plugins" "$scratch/profile/profiles/default/QGIS"
cp "$module" "$scratch/plugins/" && cp "$sample" "$scratch/larkfold.gpkg"
for version in 3 4; do
    cat >"$scratch/profile/profiles/default/QGIS/QGIS$version.ini" <<I
[plugins]
searchPathsForPlugins=$scratch/plugins
[Plugins]
$(basename "$module" .so)=true
[PythonPlugins]
MetaSearch=false
db_manager=false
[qgis]
checkVersion=false
[locale]
overrideFlag=true
userLocale=$language
globalLocale=$language
[core]
NewsFeed\\httpsfeedqgisorg\\disabled=true
I
done
cd "$scratch"
exec timeout -k 5 150 xvfb-run -a -s "-screen 0 1600x1000x24" \
    qgis --nologo --noversioncheck --profiles-path "$scratch/profile" --code "$scenario"
