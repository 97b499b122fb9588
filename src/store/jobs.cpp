#include "store/jobs.h"

#include "store/records.h"
#include "store/store.h"

#include <fmt/format.h>

namespace toft::store {

namespace {

bool letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || (c & 0x80);
}

/// Words to be found, each quoted and open at its end, as FTS5 asks. Empty: all jobs.
std::string words_asked(const std::string& text) {
    std::string asked;
    bool in_word = false;
    for (const char c : text) {
        if (letter(c) && !in_word) asked += '"';
        if (!letter(c) && in_word) asked += "\"* ";
        in_word = letter(c);
        if (in_word) asked += c;
    }
    return in_word ? asked + "\"*" : asked;
}

bool is_there(Work& work, const std::string& id) {
    Rows rows(work, "SELECT 1 FROM job WHERE id = ?", id);
    return rows.next();
}

}  // namespace

Outcome<JobState> create(Store& store, const std::string& id, const std::string& job,
                         const Act& act) {
    Faults faults = unfit_job(job);
    if (!good_id(id)) faults.push_back(bad_id(id));
    if (!faults.empty()) return failed(std::move(faults));
    Work work(store.database(), Work::Kind::writes);
    if (!is_there(work, id)) {
        add_revision(work, add_job(work, id, act), without_mark(job), std::nullopt, act);
        return finished(work, state_of(work, id));
    }
    const JobRecord there = job_record(work, id);
    if (work.sound() && !merge::same_job(text_of(work, there.number, 1), job)) {
        work.fail("taken", fmt::format("another job is called {}: give this one another id", id));
    }
    return finished(work, state_of(work, id));
}

Outcome<JobState> load(Store& store, const std::string& id) {
    Work work(store.database(), Work::Kind::reads);
    job_record(work, id);
    return finished(work, state_of(work, id));
}

Outcome<JobState> set_archived(Store& store, const std::string& id, bool archived) {
    Work work(store.database(), Work::Kind::writes);
    const JobRecord job = job_record(work, id);
    work.run("UPDATE job SET archived = ? WHERE number = ?", archived ? 1l : 0l, job.number);
    return finished(work, state_of(work, id));
}

Outcome<std::vector<JobRow>> jobs(Store& store, const Find& find) {
    Work work(store.database(), Work::Kind::reads);
    std::vector<JobRow> found;
    const std::string asked = words_asked(find.text);
    Rows rows(
        work,
        "SELECT id, CASE json_type(text, '$.title') WHEN 'text' THEN "
        "json_extract(text, '$.title') END, current, changed_at, changed_by, archived "
        "FROM job JOIN revision ON revision.job = number AND revision = current "
        "WHERE (? OR NOT archived) AND (? OR number IN "
        "(SELECT rowid FROM words WHERE words MATCH ?)) ORDER BY changed_at DESC, number DESC",
        find.archived ? 1l : 0l, asked.empty() ? 1l : 0l, asked.empty() ? "\"\"" : asked);
    while (rows.next()) {
        found.push_back({rows.text(0), rows.text(1), rows.whole(2), rows.text(3), rows.text(4),
                         rows.whole(5) != 0});
    }
    return finished(work, std::move(found));
}

Outcome<std::vector<Revision>> revisions(Store& store, const std::string& id) {
    Work work(store.database(), Work::Kind::reads);
    const JobRecord job = job_record(work, id);
    std::vector<Revision> found;
    Rows rows(work,
              "WITH RECURSIVE made(number) AS (VALUES(?) UNION ALL SELECT parent FROM made JOIN "
              "revision ON job = ? AND revision = made.number WHERE parent IS NOT NULL) "
              "SELECT revision, at, by, what, revision NOT IN (SELECT number FROM made) "
              "FROM revision WHERE job = ? ORDER BY revision DESC",
              job.current, job.number, job.number);
    while (rows.next()) {
        found.push_back(
            {rows.whole(0), rows.text(1), rows.text(2), rows.text(3), rows.whole(4) != 0, ""});
    }
    return finished(work, std::move(found));
}

Outcome<Revision> revision(Store& store, const std::string& id, long revision) {
    const auto all = revisions(store, id);
    if (!all) return failed(all.error());
    Work work(store.database(), Work::Kind::reads);
    const std::string text = text_of(work, job_record(work, id).number, revision);
    Revision found;
    for (const Revision& one : *all) {
        if (one.revision == revision) found = one;
    }
    found.job = text;
    return finished(work, std::move(found));
}

}  // namespace toft::store
