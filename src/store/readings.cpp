#include "store/readings.h"

#include "store/attached.h"
#include "store/checks.h"
#include "store/store.h"

namespace toft::store {

long insert_reading(Work& work, long job, long revision, const NewReading& reading,
                    const Act& act) {
    work.run(
        "INSERT INTO reading(job, fact, revision, value, unit, instrument, note, at, by) "
        "VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?)",
        job, reading.fact, revision, reading.value, reading.unit, reading.instrument, reading.note,
        act.at, act.by);
    return work.last_number();
}

Outcome<Reading> add_reading(Store& store, const NewReading& reading, const Act& act) {
    Faults faults;
    check_reading(reading, reading.fact, faults);
    Work work(store.database(), Work::Kind::writes);
    const JobRecord job = job_record(work, reading.job);
    if (work.sound() && faults.empty() && reading.fact.front() == '/' &&
        !leads_somewhere(reading.fact, job.text)) {
        work.fail({"bad-pointer",
                   reading.fact,
                   "the job has no such place: load it again and choose the fact anew",
                   "",
                   {}});
    }
    for (Fault& fault : faults) work.fail(std::move(fault));
    const long number = insert_reading(work, job.number, job.current, reading, act);
    return finished(work, Reading{number,
                                  reading.job,
                                  {reading.fact, job.current, false},
                                  reading.value,
                                  reading.unit,
                                  reading.instrument,
                                  reading.note,
                                  act.at,
                                  act.by});
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
        found.push_back({rows.whole(0), job, places.place(rows.text(1), rows.whole(2)),
                         rows.number(3), rows.text(4), rows.text(5), rows.text(6), rows.text(7),
                         rows.text(8)});
    }
    return finished(work, std::move(found));
}

}  // namespace toft::store
