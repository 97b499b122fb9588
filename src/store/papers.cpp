#include "store/papers.h"

#include "store/attached.h"
#include "store/checks.h"
#include "store/store.h"

#include <fmt/format.h>

namespace toft::store {

namespace {

std::vector<PaperFile> files_of(Work& work, long issue) {
    std::vector<PaperFile> files;
    Rows rows(work,
              "SELECT name, title, type, length(bytes) FROM paper WHERE issue = ? ORDER BY place",
              issue);
    while (rows.next()) {
        files.push_back({rows.text(0), rows.text(1), rows.text(2),
                         static_cast<std::size_t>(rows.whole(3)), ""});
    }
    return files;
}

struct Ending {
    std::string_view ending;
    const char* type;
};

constexpr Ending endings[] = {
    {".pdf", "application/pdf"},
    {".csv", "text/csv; charset=utf-8"},
    {".dxf", "image/vnd.dxf"},
    {".xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"},
};

}  // namespace

std::string paper_type(const std::string& name) {
    const std::size_t dot = name.find_last_of('.');
    for (const Ending& one : endings) {
        if (dot != std::string::npos && name.substr(dot) == one.ending) return one.type;
    }
    return "";
}

long insert_issue(Work& work, long job, const NewIssue& issue, const Act& act) {
    work.run("INSERT INTO issue(job, revision, at, by, what) VALUES(?, ?, ?, ?, ?)", job,
             issue.revision, act.at, act.by, act.what);
    const long number = work.last_number();
    long place = 0;
    for (const PaperFile& file : issue.files) {
        work.run(
            "INSERT INTO paper(issue, place, name, title, type, bytes) VALUES(?, ?, ?, ?, ?, ?)",
            number, ++place, file.name, file.title, file.type, Bytes{file.bytes});
    }
    return number;
}

Outcome<Issue> issue_papers(Store& store, const NewIssue& issue, const Act& act) {
    Faults faults;
    check_issue(issue, "", faults);
    Work work(store.database(), Work::Kind::writes);
    const JobRecord job = job_record(work, issue.job);
    text_of(work, job.number, issue.revision);
    for (Fault& fault : faults) work.fail(std::move(fault));
    const long number = insert_issue(work, job.number, issue, act);
    Issue made{number, issue.job, issue.revision, act.at, act.by, act.what, files_of(work, number)};
    return finished(work, std::move(made));
}

Outcome<std::vector<Issue>> issues(Store& store, const std::string& job) {
    Work work(store.database(), Work::Kind::reads);
    const JobRecord record = job_record(work, job);
    std::vector<Issue> found;
    Rows rows(work,
              "SELECT issue, revision, at, by, what FROM issue WHERE job = ? ORDER BY issue DESC",
              record.number);
    while (rows.next()) {
        found.push_back({rows.whole(0), job, rows.whole(1), rows.text(2), rows.text(3),
                         rows.text(4), files_of(work, rows.whole(0))});
    }
    return finished(work, std::move(found));
}

Outcome<PaperFile> paper(Store& store, long issue, const std::string& name) {
    Work work(store.database(), Work::Kind::reads);
    Rows rows(work,
              "SELECT name, title, type, length(bytes), bytes FROM paper "
              "WHERE issue = ? AND name = ?",
              issue, name);
    if (!rows.next()) {
        if (work.sound()) {
            work.fail("no-such-paper", fmt::format("issue {} holds no file {}", issue, name));
        }
        return finished(work, PaperFile{});
    }
    return finished(work, PaperFile{rows.text(0), rows.text(1), rows.text(2),
                                    static_cast<std::size_t>(rows.whole(3)), rows.text(4)});
}

}  // namespace toft::store
