#include "store/readings.h"

#include "store/attached.h"
#include "store/checks.h"
#include "store/store.h"

namespace toft::store {

namespace {

Reading reading_of(const Rows& rows, const std::string& job, PlacesNow& places) {
    return {rows.whole(0),  job,          places.place(rows.text(1), rows.whole(2)),
            rows.number(3), rows.text(4), rows.text(5),
            rows.text(6),   rows.text(7), rows.text(8)};
}

/// The reading that was kept under this id; `taken` where it is another job's.
std::optional<Reading> sent_before(Work& work, const JobRecord& job, const NewReading& reading) {
    if (!work.sound() || reading.id.empty()) return std::nullopt;
    PlacesNow places(work, job);
    Rows rows(work,
              "SELECT reading, fact, revision, value, unit, instrument, note, at, by, job "
              "FROM reading WHERE id = ?",
              reading.id);
    if (!rows.next()) return std::nullopt;
    if (rows.whole(9) == job.number) return reading_of(rows, reading.job, places);
    work.fail("taken", "a reading of another job has that id: give this one another");
    return std::nullopt;
}

}  // namespace

long insert_reading(Work& work, long job, long revision, const NewReading& reading,
                    const Act& act) {
    work.run(
        "INSERT INTO reading(job, fact, revision, value, unit, instrument, note, at, by, id) "
        "VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, nullif(?, ''))",
        job, reading.fact, revision, reading.value, reading.unit, reading.instrument, reading.note,
        act.at, act.by, reading.id);
    return work.last_number();
}

Outcome<Reading> add_reading(Store& store, const NewReading& reading, const Act& act) {
    Faults faults;
    check_reading(reading, reading.fact, faults);
    Work work(store.database(), Work::Kind::writes);
    const JobRecord job = job_record(work, reading.job);
    if (auto before = sent_before(work, job, reading)) return finished(work, std::move(*before));
    for (Fault& fault : faults) work.fail(std::move(fault));
    const long revision = revision_of_fact(work, job, reading.fact, reading.revision);
    const long number = insert_reading(work, job.number, revision, reading, act);
    FactPlace place = PlacesNow(work, job).place(reading.fact, revision);
    return finished(work, Reading{number, reading.job, std::move(place), reading.value,
                                  reading.unit, reading.instrument, reading.note, act.at, act.by});
}

Outcome<std::vector<Reading>> readings(Store& store, const std::string& job) {
    Work work(store.database(), Work::Kind::reads);
    const JobRecord record = job_record(work, job);
    PlacesNow places(work, record);
    std::vector<Reading> found;
    Rows rows(work,
              "SELECT reading, fact, revision, value, unit, instrument, note, at, by FROM reading "
              "WHERE job = ? ORDER BY reading",
              record.number);
    while (rows.next()) {
        found.push_back(reading_of(rows, job, places));
    }
    return finished(work, std::move(found));
}

}  // namespace toft::store
