#pragma once
// What toft keeps: one SQLite file with jobs, every revision of them, photos, readings, papers as
// they were issued, and settings. Page: docs/store.md.
//
// Every function that changes something returns only when the change is on the disk (a commit of
// SQLite with synchronous=FULL), or has changed nothing at all. None reads a clock or a random
// source: time, author and ids are arguments. Several programs may hold the same file open.
//
// Faults of any function here: `disk-full`, `read-only`, `locked` (another program held it longer
// than `Options::patience_ms`), `spoilt` (the file is damaged), `disk` (reading or writing failed).

#include "base/outcome.h"
#include "store/jobs.h"
#include "store/papers.h"
#include "store/photos.h"
#include "store/readings.h"
#include "store/settings.h"
#include "store/transfer.h"

#include <memory>
#include <string>

namespace toft::store {

class Database;

/// An open file. One thread at a time may use it; open it once for each thread.
class Store {
public:
    explicit Store(std::unique_ptr<Database> database);
    ~Store();
    Store(Store&& other) noexcept;
    Store& operator=(Store&& other) noexcept;

    Database& database() { return *database_; }  ///< for the rooms of store itself

private:
    std::unique_ptr<Database> database_;
};

struct Options {
    int patience_ms = 10000;  ///< how long another program is waited for
    long most_bytes = 0;      ///< how large the file may grow; 0 for as large as the disk
};

/// Opens the file at `path`, makes it where there is none (mode 0600), and brings an older one up
/// to date, wholly or not at all. Faults besides those above, all with the file untouched:
/// `cannot-open`, `not-a-store` (no database, or another program's), `newer-store`.
Outcome<Store> open(const std::string& path, const Options& options = {});

/// Where the store of a user lives: `toft/toft.sqlite` in `xdg_data_home`, or in `.local/share` of
/// `home` where that is empty or no absolute path, as the XDG Base Directory Specification 0.8
/// has it. Fault `no-home` where neither serves.
Outcome<std::string> usual_path(const std::string& xdg_data_home, const std::string& home);

/// Makes the folder that holds `path`, and those above it, for the user alone (mode 0700). Folders
/// that are there stay as they are. Fault `cannot-open`.
Faults make_folder_of(const std::string& path);

}  // namespace toft::store
