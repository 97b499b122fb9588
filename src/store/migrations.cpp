#include "store/migrations.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace toft::store {

namespace {

/// What is said of revisions and papers holds in the file itself: they neither change nor go.
constexpr const char* jobs_and_settings = R"(
CREATE TABLE job(
    number INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    current INTEGER NOT NULL,
    archived INTEGER NOT NULL DEFAULT 0 CHECK(archived IN (0, 1)),
    changed_at TEXT NOT NULL,
    changed_by TEXT NOT NULL,
    FOREIGN KEY(number, current) REFERENCES revision(job, revision) DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE TABLE revision(
    job INTEGER NOT NULL REFERENCES job(number),
    revision INTEGER NOT NULL CHECK(revision > 0),
    parent INTEGER CHECK(parent < revision),
    redo INTEGER,
    at TEXT NOT NULL,
    by TEXT NOT NULL,
    what TEXT NOT NULL,
    text TEXT NOT NULL CHECK(json_valid(text)),
    PRIMARY KEY(job, revision),
    FOREIGN KEY(job, parent) REFERENCES revision(job, revision),
    FOREIGN KEY(job, redo) REFERENCES revision(job, revision) DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE TRIGGER revision_keeps BEFORE UPDATE OF job, revision, parent, at, by, what, text ON revision
    BEGIN SELECT RAISE(ABORT, 'a revision never changes'); END;
CREATE TRIGGER revision_stays BEFORE DELETE ON revision
    BEGIN SELECT RAISE(ABORT, 'a revision never goes'); END;
CREATE TABLE setting(name TEXT NOT NULL PRIMARY KEY, text TEXT NOT NULL) STRICT, WITHOUT ROWID;
)";

constexpr const char* photos_readings_papers = R"(
CREATE TABLE photo(
    photo INTEGER PRIMARY KEY AUTOINCREMENT,
    job INTEGER NOT NULL,
    fact TEXT NOT NULL,
    revision INTEGER NOT NULL,
    note TEXT NOT NULL,
    type TEXT NOT NULL,
    at TEXT NOT NULL,
    by TEXT NOT NULL,
    bytes BLOB NOT NULL,
    FOREIGN KEY(job, revision) REFERENCES revision(job, revision)
) STRICT;
CREATE INDEX photo_of_job ON photo(job);
CREATE TABLE reading(
    reading INTEGER PRIMARY KEY AUTOINCREMENT,
    job INTEGER NOT NULL,
    fact TEXT NOT NULL,
    revision INTEGER NOT NULL,
    value REAL NOT NULL,
    unit TEXT NOT NULL,
    instrument TEXT NOT NULL,
    note TEXT NOT NULL,
    at TEXT NOT NULL,
    by TEXT NOT NULL,
    FOREIGN KEY(job, revision) REFERENCES revision(job, revision)
) STRICT;
CREATE INDEX reading_of_job ON reading(job);
CREATE TABLE issue(
    issue INTEGER PRIMARY KEY AUTOINCREMENT,
    job INTEGER NOT NULL,
    revision INTEGER NOT NULL,
    at TEXT NOT NULL,
    by TEXT NOT NULL,
    what TEXT NOT NULL,
    FOREIGN KEY(job, revision) REFERENCES revision(job, revision)
) STRICT;
CREATE INDEX issue_of_job ON issue(job);
CREATE TABLE paper(
    issue INTEGER NOT NULL REFERENCES issue(issue),
    place INTEGER NOT NULL,
    name TEXT NOT NULL,
    title TEXT NOT NULL,
    type TEXT NOT NULL,
    bytes BLOB NOT NULL,
    PRIMARY KEY(issue, name)
) STRICT;
CREATE TRIGGER issue_keeps BEFORE UPDATE ON issue
    BEGIN SELECT RAISE(ABORT, 'what was issued never changes'); END;
CREATE TRIGGER issue_stays BEFORE DELETE ON issue
    BEGIN SELECT RAISE(ABORT, 'what was issued never goes'); END;
CREATE TRIGGER paper_keeps BEFORE UPDATE ON paper
    BEGIN SELECT RAISE(ABORT, 'what was issued never changes'); END;
CREATE TRIGGER paper_stays BEFORE DELETE ON paper
    BEGIN SELECT RAISE(ABORT, 'what was issued never goes'); END;
)";

/// The texts of each job's current revision, by words.
constexpr const char* words_to_find = R"(
CREATE VIRTUAL TABLE words USING fts5(text, tokenize = "unicode61 remove_diacritics 2");
INSERT INTO words(rowid, text)
    SELECT job.number, coalesce((SELECT group_concat(atom, char(10)) FROM json_tree(revision.text)
                                 WHERE type = 'text'), '')
    FROM job JOIN revision ON revision.job = job.number AND revision.revision = job.current;
)";

/// What is sent twice, because its answer was lost, is kept once.
constexpr const char* ids_of_senders = R"(
ALTER TABLE photo ADD COLUMN id TEXT;
CREATE UNIQUE INDEX photo_id ON photo(id);
ALTER TABLE reading ADD COLUMN id TEXT;
CREATE UNIQUE INDEX reading_id ON reading(id);
)";

/// To change the form, add one; never alter one that was given out.
constexpr const char* migrations[] = {jobs_and_settings, photos_readings_papers, words_to_find,
                                      ids_of_senders};

}  // namespace

long newest_version() { return static_cast<long>(std::size(migrations)); }

Faults migrate(Database& database, long to) {
    const auto before = database.number("PRAGMA user_version");
    if (!before) return before.error();
    if (*before >= to) return {};
    Faults faults = database.run("BEGIN IMMEDIATE");
    if (!faults.empty()) return faults;
    const auto version = database.number("PRAGMA user_version");  // another may have been quicker
    if (!version) faults = version.error();
    for (long next = version.value_or(to); next < to && faults.empty(); ++next) {
        faults = database.run(migrations[next]);
    }
    if (faults.empty()) {
        faults = database.run(fmt::format("PRAGMA application_id = {}; PRAGMA user_version = {}",
                                          application_id, std::max(to, version.value_or(to))));
    }
    if (faults.empty()) faults = database.run("COMMIT");
    if (!faults.empty()) database.run("ROLLBACK");
    return faults;
}

}  // namespace toft::store
