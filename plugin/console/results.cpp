// SPDX-License-Identifier: MIT
#include "console/results.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <QString>
#include <algorithm>
#include <cstdio>

#include "console/people.h"
#include "pipward/operation/outcome_json.h"
#include "pipward/record/table_text.h"

namespace pipward::console {
namespace {

Error cannot_write(const std::string& path, const Sentence& why, const Sentence& remedy) {
    return {Trouble::access, Finding{Level::error, path, "", "", "", why, remedy}};
}

void keep(const operation::MadeFile& file, const QDir& folder) {
    QSaveFile target(folder.filePath(QString::fromStdString(file.name)));
    const auto size = static_cast<qint64>(file.content.size());
    const bool written = target.open(QIODevice::WriteOnly) && target.write(file.content.data(), size) == size;
    if (!written || !target.commit()) {
        throw cannot_write(target.fileName().toStdString(),
                           say("The file cannot be written: {}.", target.errorString().toStdString()),
                           say("Check the folder's rights and the free space."));
    }
}

std::vector<Table> wanted_tables(const Call& call, const operation::Outcome& outcome) {
    std::vector<Table> tables;
    std::ranges::copy_if(outcome.tables, std::back_inserter(tables), [&](const Table& table) {
        return call.output.table.empty() || table.shape.name == call.output.table;
    });
    return tables;
}

std::string csv_text(const Call& call, const std::vector<Table>& tables) {
    const bool in_files = call.output.table.empty() && !call.output.out.empty();
    return in_files || tables.empty() ? "" : to_csv(tables.front());
}

}  // namespace

void prepare_folder(const Output& output) {
    if (output.out.empty()) {
        return;
    }
    const auto folder = QString::fromStdString(output.out);
    if (!QDir().mkpath(folder) || !QFileInfo(folder).isWritable()) {
        throw cannot_write(output.out, say("Files cannot be written in this folder."),
                           say("Name a folder that you may write in with --out."));
    }
}

std::vector<operation::MadeFile> files_to_keep(const Call& call, const operation::Outcome& outcome) {
    auto files = outcome.files;
    if (call.output.format == Format::csv && !call.output.out.empty()) {
        for (const auto& table : wanted_tables(call, outcome)) {
            files.push_back({table.shape.name + ".csv", "text/csv", to_csv(table)});
        }
    }
    return files;
}

void keep(const std::vector<operation::MadeFile>& files, const std::string& folder) {
    const QDir directory(QString::fromStdString(folder));
    for (const auto& file : files) {
        keep(file, directory);
    }
}

std::string printed(const Call& call, const operation::Outcome& outcome) {
    if (call.output.format == Format::table) {
        return text_for_people(call, outcome);
    }
    auto shown = outcome;
    shown.tables = wanted_tables(call, outcome);
    return call.output.format == Format::json ? operation::outcome_json(*call.operation, call.form, shown)
                                              : csv_text(call, shown.tables);
}

void print(const std::string& text) {
    const auto written = std::fwrite(text.data(), 1, text.size(), stdout);
    if (written != text.size() || std::fflush(stdout) != 0) {
        throw cannot_write("standard output", say("Standard output takes no more."),
                           say("Check what it leads to."));
    }
}

}  // namespace pipward::console
