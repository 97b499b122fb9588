#include "store/parcel.h"

namespace toft::store {

namespace {

void take_revisions(Work& work, long job, Parcel& parcel) {
    Rows rows(work,
              "SELECT revision, parent, redo, at, by, what, text FROM revision WHERE job = ? "
              "ORDER BY revision",
              job);
    while (rows.next()) {
        parcel.revisions.push_back({rows.whole(0),
                                    rows.maybe(1),
                                    rows.maybe(2),
                                    {rows.text(3), rows.text(4), rows.text(5)},
                                    rows.text(6)});
    }
}

void take_photos(Work& work, long job, Parcel& parcel) {
    Rows rows(work,
              "SELECT fact, note, type, bytes, revision, at, by FROM photo WHERE job = ? "
              "ORDER BY photo",
              job);
    while (rows.next()) {
        parcel.photos.push_back(
            {{parcel.id, rows.text(0), rows.text(1), rows.text(2), rows.text(3)},
             rows.whole(4),
             {rows.text(5), rows.text(6), ""}});
    }
}

void take_readings(Work& work, long job, Parcel& parcel) {
    Rows rows(work,
              "SELECT fact, value, unit, instrument, note, revision, at, by FROM reading "
              "WHERE job = ? ORDER BY reading",
              job);
    while (rows.next()) {
        parcel.readings.push_back(
            {{parcel.id, rows.text(0), rows.number(1), rows.text(2), rows.text(3), rows.text(4)},
             rows.whole(5),
             {rows.text(6), rows.text(7), ""}});
    }
}

void take_issues(Work& work, long job, Parcel& parcel) {
    Rows rows(work, "SELECT issue, revision, at, by, what FROM issue WHERE job = ? ORDER BY issue",
              job);
    while (rows.next()) {
        NewIssue issue{parcel.id, rows.whole(1), {}};
        Rows files(work,
                   "SELECT name, title, type, bytes FROM paper WHERE issue = ? ORDER BY place",
                   rows.whole(0));
        while (files.next()) {
            std::string bytes = files.text(3);
            const std::size_t size = bytes.size();
            issue.files.push_back(
                {files.text(0), files.text(1), files.text(2), size, std::move(bytes)});
        }
        parcel.issues.push_back(
            {std::move(issue), rows.whole(1), {rows.text(2), rows.text(3), rows.text(4)}});
    }
}

}  // namespace

Parcel parcel_of(Work& work, const std::string& id) {
    Parcel parcel;
    parcel.id = id;
    const JobRecord job = job_record(work, id);
    const JobState state = state_of(work, id);
    parcel.archived = state.archived;
    parcel.current = job.current;
    parcel.changed = {state.changed_at, state.changed_by, ""};
    take_revisions(work, job.number, parcel);
    take_photos(work, job.number, parcel);
    take_readings(work, job.number, parcel);
    take_issues(work, job.number, parcel);
    return parcel;
}

}  // namespace toft::store
