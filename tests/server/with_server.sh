#!/bin/sh
# SPDX-License-Identifier: MIT
# Starts a PostGIS server of its own with an empty database, runs a command with PIPWARD_SERVER naming it, and
# takes the server away again: sh with_server.sh COMMAND WORDS ...
# 77 means skipped: no server is installed.
set -u
bin=$(ls -d /usr/lib/postgresql/*/bin 2>/dev/null | tail -n 1)
[ -n "$bin" ] || { echo "skipped: no PostgreSQL server is installed" >&2; exit 77; }

home=$(mktemp -d) || exit 1
# The server does not run as root.
as_owner=
if [ "$(id -u)" = 0 ]; then
    id postgres >/dev/null 2>&1 || { echo "skipped: the server's own user is missing" >&2; exit 77; }
    chown postgres "$home" && chmod 755 "$home" || exit 1
    as_owner="runuser -u postgres --"
fi
# shellcheck disable=SC2086 # the words of as_owner
{
    stop() { $as_owner "$bin/pg_ctl" -D "$home/data" -m immediate stop >/dev/null 2>&1; rm -rf "$home"; }
    trap stop EXIT
    cd "$home" || exit 1
    # A socket in its own folder and no port: servers that run beside each other cannot meet.
    $as_owner "$bin/initdb" -D "$home/data" -U pipward -A trust -E UTF8 --locale C -N >"$home/log" 2>&1 &&
        $as_owner "$bin/pg_ctl" -D "$home/data" -w -o "-c listen_addresses='' -c unix_socket_directories='$home' -c fsync=off" \
            -l "$home/data/server.log" start >>"$home/log" 2>&1 &&
        "$bin/createdb" -h "$home" -U pipward orchard &&
        "$bin/psql" -q -h "$home" -U pipward -d orchard -c 'create extension postgis' >/dev/null ||
        { echo "the server did not start:" >&2; cat "$home/log" "$home/data/server.log" >&2; exit 1; }
}
PIPWARD_SERVER="PG:host=$home dbname=orchard user=pipward" "$@"
