#include "store/records.h"

#include "codec/document.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::store {

namespace {

Fault cut_text(const std::string& pointer) {
    return {"bad-text",
            pointer,
            "this text holds a NUL character, where others would cut it off: take it out",
            "",
            {}};
}

/// Notes every text and key that holds a NUL character: SQLite ends texts there.
void find_cut_texts(const codec::Json& node, const std::string& pointer, Faults& faults) {
    if (faults.size() >= codec::most_faults) return;
    if (node.is_string()) {
        const auto& text = node.get_ref<const std::string&>();
        if (text.find('\0') != std::string::npos) faults.push_back(cut_text(pointer));
    }
    if (node.is_object()) {
        for (const auto& [key, value] : node.items()) {
            const bool cut = key.find('\0') != std::string::npos;
            if (cut) faults.push_back(cut_text(pointer));
            find_cut_texts(value, codec::child_pointer(pointer, cut ? "" : key), faults);
        }
    }
    if (node.is_array()) {
        for (std::size_t i = 0; i < node.size(); ++i) {
            find_cut_texts(node[i], codec::child_pointer(pointer, std::to_string(i)), faults);
        }
    }
}

}  // namespace

JobRecord job_record(Work& work, const std::string& id) {
    JobRecord record;
    Rows rows(work,
              "SELECT number, current, text, parent, redo FROM job JOIN revision "
              "ON revision.job = number AND revision = current WHERE id = ?",
              id);
    if (rows.next()) {
        record = {rows.whole(0), rows.whole(1), rows.text(2), rows.maybe(3), rows.maybe(4)};
    } else if (work.sound()) {
        work.fail("no-such-job", fmt::format("there is no job {}: look at the list of jobs", id));
    }
    return record;
}

JobState state_of(Work& work, const std::string& id) {
    JobState state;
    Rows rows(work,
              "SELECT id, current, text, CASE json_type(text, '$.title') WHEN 'text' THEN "
              "json_extract(text, '$.title') END, archived, changed_at, changed_by, "
              "parent IS NOT NULL, redo IS NOT NULL FROM job JOIN revision "
              "ON revision.job = number AND revision = current WHERE id = ?",
              id);
    if (!rows.next()) return state;
    state.id = rows.text(0);
    state.revision = rows.whole(1);
    state.job = rows.text(2);
    state.title = rows.text(3);
    state.archived = rows.whole(4) != 0;
    state.changed_at = rows.text(5);
    state.changed_by = rows.text(6);
    state.can_undo = rows.whole(7) != 0;
    state.can_redo = rows.whole(8) != 0;
    return state;
}

std::string text_of(Work& work, long job, long revision) {
    Rows rows(work, "SELECT text FROM revision WHERE job = ? AND revision = ?", job, revision);
    if (rows.next()) return rows.text(0);
    if (work.sound()) {
        work.fail("no-such-revision",
                  fmt::format("this job has no revision {}: load it again", revision));
    }
    return {};
}

long add_revision(Work& work, long job, const std::string& text, std::optional<long> parent,
                  const Act& act) {
    long next = 1;
    {
        Rows rows(work, "SELECT coalesce(max(revision), 0) + 1 FROM revision WHERE job = ?", job);
        if (rows.next()) next = rows.whole(0);
    }
    work.run(
        "INSERT INTO revision(job, revision, parent, at, by, what, text) "
        "VALUES(?, ?, ?, ?, ?, ?, ?)",
        job, next, parent, act.at, act.by, act.what, text);
    make_current(work, job, next, act);
    return next;
}

void make_current(Work& work, long job, long revision, const Act& act) {
    work.run("UPDATE job SET current = ?, changed_at = ?, changed_by = ? WHERE number = ?",
             revision, act.at, act.by, job);
    work.run("DELETE FROM words WHERE rowid = ?", job);
    work.run(
        "INSERT INTO words(rowid, text) SELECT ?, coalesce((SELECT group_concat(atom, char(10)) "
        "FROM json_tree(text) WHERE type = 'text'), '') FROM revision "
        "WHERE job = ? AND revision = ?",
        job, job, revision);
}

long add_job(Work& work, const std::string& id, const Act& act) {
    work.run("INSERT INTO job(id, current, changed_at, changed_by) VALUES(?, 0, ?, ?)", id, act.at,
             act.by);
    return work.last_number();
}

Faults unfit_job(const std::string& text) {
    const auto document = codec::parse_document(text);
    if (!document) return document.error();
    Faults faults;
    find_cut_texts(*document, "", faults);
    if (document->is_object() || !faults.empty()) return faults;
    return {{"not-a-job", "", "a job is a JSON object: send one", "", {}}};
}

std::string without_mark(const std::string& text) {
    return text.substr(0, 3) == "\xef\xbb\xbf" ? text.substr(3) : text;
}

bool good_id(const std::string& id) {
    return !id.empty() && id.size() <= 64 && std::all_of(id.begin(), id.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               c == '-' || c == '_';
    });
}

Fault bad_id(const std::string& id) {
    return {"bad-id", "", "\"" + id + "\" is no id: use 1 to 64 letters, digits, - or _", "", {}};
}

}  // namespace toft::store
