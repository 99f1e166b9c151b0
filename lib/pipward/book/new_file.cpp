// SPDX-License-Identifier: MIT
#include "pipward/book/detail/new_file.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <filesystem>

#include "pipward/book/detail/no_network.h"
#include "pipward/book/detail/ogr_session.h"

namespace pipward::book::detail {
namespace {

namespace fs = std::filesystem;

// Two who make books in one folder follow each other: they would take one another's half-made file for a
// leftover. Where a folder cannot be locked, nothing is lost but that.
class FolderLock {
  public:
    explicit FolderLock(const fs::path& folder)
        : folder_(open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)) {
        if (folder_ >= 0) {
            flock(folder_, LOCK_EX);
        }
    }
    ~FolderLock() {
        if (folder_ >= 0) {
            close(folder_);
        }
    }
    FolderLock(const FolderLock&) = delete;
    FolderLock& operator=(const FolderLock&) = delete;

  private:
    int folder_;
};

// A new name that appears whole or not at all, and never over a file that came meanwhile.
void put_in_place(const fs::path& made, const fs::path& wanted) {
    std::error_code trouble;
    fs::create_hard_link(made, wanted, trouble);
    if (trouble && trouble != std::errc::file_exists && !fs::exists(wanted)) {
        fs::rename(made, wanted);  // a file system without hard links
        return;
    }
    if (trouble) {
        throw OgrTrouble("a file of that name has appeared meanwhile");
    }
    fs::remove(made);
}

void remove_leftovers(const fs::path& made) {
    for (const auto* ending : {"", "-journal", "-wal", "-shm"}) {
        std::error_code ignored;
        fs::remove(made.string() + ending, ignored);
    }
}

Error no_name_of_a_book(const std::string& field, const std::string& path) {
    return {Trouble::usage, Finding{.level = Level::error,
                                    .table = {},
                                    .row = {},
                                    .field = field,
                                    .value = path,
                                    .message = say("A book's name ends with .gpkg."),
                                    .remedy = say("Give it a name like orchard.gpkg.")}};
}

}  // namespace

void make_whole_file(const std::string& path, const std::string& field,
                     const std::function<void(const std::string& made)>& make) {
    constexpr std::string_view ending = ".gpkg";
    if (!path.ends_with(ending)) {
        throw no_name_of_a_book(field, path);
    }
    const FolderLock alone(fs::path(path).parent_path());
    if (std::error_code ignored; fs::exists(fs::symlink_status(path, ignored))) {
        throw access_error(path, say("There is a file of that name already."),
                           say("Choose another name; a book is never overwritten."));
    }
    const fs::path made = path.substr(0, path.size() - ending.size()) + ".part.gpkg";
    remove_leftovers(made);
    try {
        make(made.string());
        put_in_place(made, path);
    } catch (const Error&) {
        remove_leftovers(made);
        throw;
    } catch (const std::exception& trouble) {
        remove_leftovers(made);
        throw access_error(path, say("The book cannot be made: {}.", trouble.what()),
                           say("Check that the folder exists and may be written, and that there is room."));
    }
}

}  // namespace pipward::book::detail
