#include "store/database.h"

#include "store/migrations.h"

#include <fmt/format.h>
#include <sys/stat.h>

#include <cerrno>
#include <chrono>
#include <cstring>
#include <thread>

namespace toft::store {

namespace {

Fault fault_of(const char* code, std::string says) { return {code, "", std::move(says), "", {}}; }

Fault cannot_open(const std::string& path, const std::string& why) {
    return fault_of("cannot-open", fmt::format("{} cannot be opened: {}. Look at the path, and "
                                               "whether you may write to its folder",
                                               path, why));
}

Fault no_store(const std::string& path) {
    return fault_of("not-a-store", fmt::format("{} is no store of toft; it was left as it is. Give "
                                               "the path of another file",
                                               path));
}

}  // namespace

Fault Database::fault() const {
    const int extended = sqlite3_extended_errcode(handle_);
    const std::string words = sqlite3_errmsg(handle_);
    switch (extended & 0xff) {
        case SQLITE_FULL:
            return fault_of("disk-full",
                            "nothing was written: the disk is full, or the file is as "
                            "large as it may be. Make room and try again");
        case SQLITE_READONLY:
        case SQLITE_PERM:
            return fault_of("read-only",
                            "nothing was written: the file or its folder may not be "
                            "written to. Give yourself the right to");
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return fault_of("locked",
                            "nothing was done: another program has held the file for too "
                            "long. Close it, or try again");
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
            return fault_of("spoilt", "the file is damaged (" + words +
                                          "). Put a copy or an export in its place");
        case SQLITE_CANTOPEN:
            return fault_of("cannot-open", "the file cannot be opened: " + words +
                                               ". Look whether it is still there");
        default:
            if (extended == SQLITE_IOERR_WRITE) {
                return fault_of("disk",
                                "nothing was written: the disk took no more (a quota is "
                                "used up, or it fails). Make room, or look at the disk");
            }
            return fault_of("disk", "nothing was written: " + words + ". Look at the disk");
    }
}

Database::~Database() { sqlite3_close(handle_); }

Faults Database::run(const std::string& sql) {
    if (sqlite3_exec(handle_, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK) return {};
    return {fault()};
}

Outcome<long> Database::number(const std::string& sql) {
    long found = 0;
    const auto take = [](void* into, int, char** values, char**) {
        if (values[0]) *static_cast<long*>(into) = std::strtol(values[0], nullptr, 10);
        return 0;
    };
    if (sqlite3_exec(handle_, sql.c_str(), take, &found, nullptr) != SQLITE_OK) {
        return failed(fault());
    }
    return found;
}

Faults Database::connect(const std::string& path, const Options& options) {
    // Made without being opened: to close a descriptor would drop the locks of this process.
    if (mknod(path.c_str(), S_IFREG | S_IRUSR | S_IWUSR, 0) != 0 && errno != EEXIST) {
        return {cannot_open(path, std::strerror(errno))};
    }
    const int flags = SQLITE_OPEN_READWRITE | SQLITE_OPEN_FULLMUTEX;
    if (sqlite3_open_v2(path.c_str(), &handle_, flags, nullptr) != SQLITE_OK) {
        return {cannot_open(path, handle_ ? sqlite3_errmsg(handle_) : "no memory")};
    }
    sqlite3_extended_result_codes(handle_, 1);
    sqlite3_busy_timeout(handle_, options.patience_ms);
    if (sqlite3_db_readonly(handle_, "main") == 1) {
        return {fault_of("read-only", fmt::format("{} may not be written to. Give yourself the "
                                                  "right to",
                                                  path))};
    }
    return {};
}

/// Whether the file is ours, or new, and no newer than this program. Asked at one go: another
/// program may be making it.
Faults Database::known(const std::string& path) {
    Faults faults = run("BEGIN");
    if (!faults.empty()) return faults;
    const auto tables = number("SELECT count(*) FROM sqlite_master");
    const bool foreign = (sqlite3_extended_errcode(handle_) & 0xff) == SQLITE_NOTADB;
    const auto id = number("PRAGMA application_id");
    const auto version = number("PRAGMA user_version");
    run("COMMIT");
    if (foreign) return {no_store(path)};
    if (!tables) return tables.error();
    if (!id) return id.error();
    if (!version) return version.error();
    if (*id != application_id && (*id != 0 || *tables != 0)) return {no_store(path)};
    if (*version > newest_version()) {
        return {fault_of("newer-store",
                         fmt::format("{} was written by a newer toft (form {}, this one knows {}); "
                                     "it was left as it is. Use the newer toft",
                                     path, *version, newest_version()))};
    }
    return {};
}

/// Write-ahead logging, and commits that are on the disk. Of several programs that open a new file
/// at once all but one are told to wait, and not always by the busy handler.
Faults Database::log_ahead(int patience_ms) {
    const auto give_up = std::chrono::steady_clock::now() + std::chrono::milliseconds(patience_ms);
    for (;;) {
        const Faults faults = run("PRAGMA journal_mode = WAL");
        if (faults.empty()) return run("PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL");
        if (faults.front().code != "locked") return faults;
        if (std::chrono::steady_clock::now() > give_up) return faults;
        std::this_thread::sleep_for(std::chrono::milliseconds(2));
    }
}

Outcome<std::unique_ptr<Database>> Database::open(const std::string& path, const Options& options,
                                                  long form) {
    std::unique_ptr<Database> database(new Database);
    Faults faults = database->connect(path, options);
    if (faults.empty()) faults = database->known(path);
    if (faults.empty()) faults = database->log_ahead(options.patience_ms);
    if (faults.empty()) faults = migrate(*database, form);
    if (faults.empty() && options.most_bytes > 0) {
        const auto page = database->number("PRAGMA page_size");
        if (!page) return failed(page.error());
        faults = database->run(
            fmt::format("PRAGMA max_page_count = {}", std::max(1l, options.most_bytes / *page)));
    }
    if (!faults.empty()) return failed(std::move(faults));
    return database;
}

}  // namespace toft::store
