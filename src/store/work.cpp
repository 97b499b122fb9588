#include "store/work.h"

namespace toft::store {

Work::Work(Database& database, Kind kind) : database_(database) {
    faults_ = database_.run(kind == Kind::writes ? "BEGIN IMMEDIATE" : "BEGIN");
    open_ = faults_.empty();
}

Work::~Work() {
    // SQLite itself takes all back after some errors, a full disk among them.
    if (open_ && sqlite3_get_autocommit(database_.handle()) == 0) database_.run("ROLLBACK");
}

Faults Work::finish() {
    if (!sound()) return faults_;
    faults_ = database_.run("COMMIT");
    if (sound()) open_ = false;
    return faults_;
}

bool Rows::next() {
    if (!work_.sound() || !statement_) return false;
    const int code = sqlite3_step(statement_);
    if (code == SQLITE_ROW) return true;
    if (code != SQLITE_DONE) work_.fail(work_.database_.fault());
    return false;
}

bool Rows::null(int column) const { return sqlite3_column_type(statement_, column) == SQLITE_NULL; }

std::string Rows::text(int column) const {
    const void* bytes = sqlite3_column_blob(statement_, column);
    const int size = sqlite3_column_bytes(statement_, column);
    return bytes ? std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(size))
                 : std::string();
}

std::optional<long> Rows::maybe(int column) const {
    return null(column) ? std::nullopt : std::optional(whole(column));
}

void Rows::prepare(const char* sql) {
    if (!work_.sound()) return;
    check(sqlite3_prepare_v2(work_.database_.handle(), sql, -1, &statement_, nullptr));
}

void Rows::check(int code) {
    if (code != SQLITE_OK && work_.sound()) work_.fail(work_.database_.fault());
}

void Rows::bind(int place, long value) {
    if (statement_) check(sqlite3_bind_int64(statement_, place, value));
}

void Rows::bind(int place, double value) {
    if (statement_) check(sqlite3_bind_double(statement_, place, value));
}

void Rows::bind(int place, std::string_view value) {
    if (!statement_) return;
    check(sqlite3_bind_text64(statement_, place, value.empty() ? "" : value.data(), value.size(),
                              SQLITE_TRANSIENT, SQLITE_UTF8));
}

void Rows::bind(int place, const Bytes& value) {
    if (!statement_) return;
    check(sqlite3_bind_blob64(statement_, place, value.bytes.empty() ? "" : value.bytes.data(),
                              value.bytes.size(), SQLITE_TRANSIENT));
}

void Rows::bind(int place, const std::optional<long>& value) {
    if (!statement_) return;
    if (value) {
        bind(place, *value);
    } else {
        check(sqlite3_bind_null(statement_, place));
    }
}

}  // namespace toft::store
