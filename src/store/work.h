#pragma once
// One piece of work on the file: a transaction that is kept whole or leaves nothing. The first
// fault stops all that follows, so that callers may ask once, at the end. Private to store.

#include "store/database.h"

#include <optional>
#include <string>
#include <string_view>

namespace toft::store {

/// Bytes that are no text.
struct Bytes {
    std::string_view bytes;
};

class Work {
public:
    enum class Kind { reads, writes };

    /// Begins. What writes waits for others who do.
    Work(Database& database, Kind kind);
    /// Takes all back that `finish` did not keep.
    ~Work();
    Work(const Work&) = delete;
    Work& operator=(const Work&) = delete;

    bool sound() const { return faults_.empty(); }
    const Faults& faults() const { return faults_; }
    void fail(Fault fault) { faults_.push_back(std::move(fault)); }
    void fail(const char* code, std::string says) { fail({code, "", std::move(says), "", {}}); }

    /// Runs one statement that gives no rows.
    template <class... Values>
    void run(const char* sql, const Values&... values);
    /// The number given to the row put in last.
    long last_number() const { return sqlite3_last_insert_rowid(database_.handle()); }
    /// How many rows the statement run last changed.
    int changed() const { return sqlite3_changes(database_.handle()); }

    /// Empty once all is kept, on the disk; otherwise nothing was changed.
    Faults finish();

private:
    friend class Rows;

    Database& database_;
    Faults faults_;
    bool open_ = false;
};

/// What one statement finds, row by row.
class Rows {
public:
    template <class... Values>
    Rows(Work& work, const char* sql, const Values&... values) : work_(work) {
        prepare(sql);
        int place = 0;
        (bind(++place, values), ...);
    }
    ~Rows() { sqlite3_finalize(statement_); }
    Rows(const Rows&) = delete;
    Rows& operator=(const Rows&) = delete;

    /// Goes on to the next row; false after the last, or when something failed.
    bool next();

    long whole(int column) const { return sqlite3_column_int64(statement_, column); }
    double number(int column) const { return sqlite3_column_double(statement_, column); }
    bool null(int column) const;
    /// Text or bytes; empty where null.
    std::string text(int column) const;
    std::optional<long> maybe(int column) const;

private:
    void prepare(const char* sql);
    void check(int code);
    void bind(int place, long value);
    void bind(int place, double value);
    void bind(int place, std::string_view value);
    void bind(int place, const std::string& value) { bind(place, std::string_view(value)); }
    void bind(int place, const Bytes& value);
    void bind(int place, const std::optional<long>& value);

    Work& work_;
    sqlite3_stmt* statement_ = nullptr;
};

template <class... Values>
void Work::run(const char* sql, const Values&... values) {
    if (!sound()) return;
    Rows rows(*this, sql, values...);
    while (rows.next()) {
    }
}

/// What a finished piece of work found, or its faults.
template <class T>
Outcome<T> finished(Work& work, T value) {
    Faults faults = work.finish();
    if (!faults.empty()) return failed(std::move(faults));
    return value;
}

}  // namespace toft::store
