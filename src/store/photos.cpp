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

/// The photo that was kept under this id; `taken` where it is another job's.
std::optional<Photo> sent_before(Work& work, const JobRecord& job, const NewPhoto& photo) {
    if (!work.sound() || photo.id.empty()) return std::nullopt;
    PlacesNow places(work, job);
    Rows rows(work,
              "SELECT photo, ?, fact, revision, note, type, length(bytes), at, by, job FROM photo "
              "WHERE id = ?",
              photo.job, photo.id);
    if (!rows.next()) return std::nullopt;
    if (rows.whole(9) == job.number) return photo_of(rows, places);
    work.fail("taken", "a photo of another job has that id: give this one another");
    return std::nullopt;
}

}  // namespace

long insert_photo(Work& work, long job, long revision, const NewPhoto& photo, const Act& act) {
    work.run(
        "INSERT INTO photo(job, fact, revision, note, type, at, by, bytes, id) "
        "VALUES(?, ?, ?, ?, ?, ?, ?, ?, nullif(?, ''))",
        job, photo.fact, revision, photo.note, photo.type, act.at, act.by, Bytes{photo.bytes},
        photo.id);
    return work.last_number();
}

Outcome<Photo> add_photo(Store& store, const NewPhoto& photo, const Act& act) {
    Faults faults;
    check_photo(photo, photo.fact, faults);
    Work work(store.database(), Work::Kind::writes);
    const JobRecord job = job_record(work, photo.job);
    if (auto before = sent_before(work, job, photo)) return finished(work, std::move(*before));
    const long revision = revision_of_fact(work, job, photo.fact, photo.revision);
    for (Fault& fault : faults) work.fail(std::move(fault));
    const long number = insert_photo(work, job.number, revision, photo, act);
    FactPlace place = PlacesNow(work, job).place(photo.fact, revision);
    return finished(work, Photo{number, photo.job, std::move(place), photo.note, photo.type,
                                photo.bytes.size(), act.at, act.by, ""});
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
              "SELECT photo, job.id, fact, revision, note, type, length(bytes), at, by, bytes "
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
