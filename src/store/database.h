#pragma once
// A connection to SQLite, and what its errors mean to a person. Private to store.

#include "base/outcome.h"
#include "store/store.h"

#include <sqlite3.h>

#include <memory>
#include <string>

namespace toft::store {

/// Owns the handle.
class Database {
public:
    /// Opened, known to be ours or new, in WAL mode and brought up to a form (tests ask for older).
    static Outcome<std::unique_ptr<Database>> open(const std::string& path, const Options& options,
                                                   long form);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    sqlite3* handle() const { return handle_; }
    /// What SQLite last complained of.
    Fault fault() const;
    /// Runs statements without results; empty when all went well.
    Faults run(const std::string& sql);
    /// A pragma's number; a fault when it cannot be read.
    Outcome<long> number(const std::string& sql);

private:
    Database() = default;
    Faults connect(const std::string& path, const Options& options);
    Faults known(const std::string& path);
    Faults log_ahead(int patience_ms);

    sqlite3* handle_ = nullptr;
};

/// "toft" in the header of the file, by which it is known from other programs' databases.
inline constexpr long application_id = 0x746f6674;

}  // namespace toft::store
