#include "store/photos.h"

#include "store/attached.h"
#include "store/checks.h"
#include "store/store.h"

#include <fmt/format.h>

namespace toft::store {

namespace {

/// Everything but the bytes, which are read only when asked for.
Photo photo_of(const Rows& rows, PlacesNow& places) {
    return {rows.whole(0), rows.text(1), places.place(rows.text(2), rows.whole(3)),
            rows.text(4),  rows.text(5), static_cast<std::size_t>(rows.whole(6)),
            rows.text(7),  rows.text(8), ""};
}

void no_such_photo(Work& work, long photo) {
    if (work.sound()) work.fail("no-such-photo", fmt::format("there is no photo {}", photo));
}

}  // namespace

long insert_photo(Work& work, long job, long revision, const NewPhoto& photo, const Act& act) {
    work.run(
        "INSERT INTO photo(job, fact, revision, note, type, at, by, bytes) "
        "VALUES(?, ?, ?, ?, ?, ?, ?, ?)",
        job, photo.fact, revision, photo.note, photo.type, act.at, act.by, Bytes{photo.bytes});
    return work.last_number();
}

Outcome<Photo> add_photo(Store& store, const NewPhoto& photo, const Act& act) {
    Faults faults;
    check_photo(photo, photo.fact, faults);
    Work work(store.database(), Work::Kind::writes);
    const JobRecord job = job_record(work, photo.job);
    if (work.sound() && !leads_somewhere(photo.fact, job.text)) {
        work.fail({"bad-pointer",
                   photo.fact,
                   "the job has no such place: load it again and choose the fact anew",
                   "",
                   {}});
    }
    for (Fault& fault : faults) work.fail(std::move(fault));
    const long number = insert_photo(work, job.number, job.current, photo, act);
    return finished(work, Photo{number,
                                photo.job,
                                {photo.fact, job.current, false},
                                photo.note,
                                photo.type,
                                photo.bytes.size(),
                                act.at,
                                act.by,
                                ""});
}

Outcome<std::vector<Photo>> photos(Store& store, const std::string& job) {
    Work work(store.database(), Work::Kind::reads);
    const JobRecord record = job_record(work, job);
    PlacesNow places(work, record);
    std::vector<Photo> found;
    Rows rows(work,
              "SELECT photo, ?, fact, revision, note, type, length(bytes), at, by FROM photo "
              "WHERE job = ? ORDER BY photo",
              job, record.number);
    while (rows.next()) found.push_back(photo_of(rows, places));
    return finished(work, std::move(found));
}

Outcome<Photo> photo(Store& store, long photo) {
    Work work(store.database(), Work::Kind::reads);
    Rows rows(work,
              "SELECT photo, id, fact, revision, note, type, length(bytes), at, by, bytes "
              "FROM photo JOIN job ON job.number = photo.job WHERE photo = ?",
              photo);
    if (!rows.next()) {
        no_such_photo(work, photo);
        return finished(work, Photo{});
    }
    const JobRecord record = job_record(work, rows.text(1));
    PlacesNow places(work, record);
    Photo found = photo_of(rows, places);
    found.bytes = rows.text(9);
    return finished(work, std::move(found));
}

Faults delete_photo(Store& store, long photo) {
    Work work(store.database(), Work::Kind::writes);
    work.run("DELETE FROM photo WHERE photo = ?", photo);
    if (work.sound() && work.changed() == 0) no_such_photo(work, photo);
    return work.finish();
}

}  // namespace toft::store
