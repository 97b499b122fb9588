#include "store/parcel.h"
#include "store/prices_rows.h"
#include "store/store.h"
#include "store/transfer.h"

#include <fmt/format.h>

#include <map>
#include <set>

namespace toft::store {

namespace {

/// How a job of a text and the job of that id here stand to each other.
enum class Standing { nowhere, here_already, further, apart };

bool same_revision(const ParcelRevision& a, const ParcelRevision& b) {
    return a.parent == b.parent && a.act.at == b.act.at && a.act.by == b.act.by &&
           a.act.what == b.act.what && merge::same_job(a.text, b.text);
}

Standing standing(const std::optional<Parcel>& here, const Parcel& parcel) {
    if (!here) return Standing::nowhere;
    std::map<long, const ParcelRevision*> ours;
    for (const ParcelRevision& one : here->revisions) ours[one.revision] = &one;
    std::size_t shared = 0;
    for (const ParcelRevision& one : parcel.revisions) {
        const auto found = ours.find(one.revision);
        if (found == ours.end()) continue;
        if (!same_revision(*found->second, one)) return Standing::apart;
        ++shared;
    }
    if (shared == parcel.revisions.size()) return Standing::here_already;
    return shared == here->revisions.size() ? Standing::further : Standing::apart;
}

/// Puts in the revisions that are not here, and makes the parcel's current one current.
void put_revisions(Work& work, long job, const Parcel& here, const Parcel& parcel) {
    std::set<long> known;
    for (const ParcelRevision& one : here.revisions) known.insert(one.revision);
    for (const ParcelRevision& one : parcel.revisions) {
        if (known.count(one.revision)) continue;
        work.run(
            "INSERT INTO revision(job, revision, parent, at, by, what, text) "
            "VALUES(?, ?, ?, ?, ?, ?, ?)",
            job, one.revision, one.parent, one.act.at, one.act.by, one.act.what, one.text);
    }
    for (const ParcelRevision& one : parcel.revisions) {
        work.run("UPDATE revision SET redo = ? WHERE job = ? AND revision = ?", one.redo, job,
                 one.revision);
    }
    make_current(work, job, parcel.current, parcel.changed);
}

/// By what a thing that hangs on a job is known again.
std::string mark(const Attached<NewPhoto>& photo) {
    return photo.what.fact + '\n' + photo.act.at + '\n' + photo.act.by + '\n' + photo.what.note +
           '\n' + photo.what.bytes;
}

std::string mark(const Attached<NewReading>& reading) {
    return fmt::format("{}\n{}\n{}\n{}\n{}\n{}", reading.what.fact, reading.act.at, reading.act.by,
                       reading.what.value, reading.what.unit, reading.what.note);
}

std::string mark(const Attached<NewIssue>& issue) {
    std::string text =
        fmt::format("{}\n{}\n{}\n{}", issue.revision, issue.act.at, issue.act.by, issue.act.what);
    for (const PaperFile& file : issue.what.files) text += '\n' + file.name + '\n' + file.bytes;
    return text;
}

void put(Work& work, long job, const Attached<NewPhoto>& photo) {
    insert_photo(work, job, photo.revision, photo.what, photo.act);
}
void put(Work& work, long job, const Attached<NewReading>& reading) {
    insert_reading(work, job, reading.revision, reading.what, reading.act);
}
void put(Work& work, long job, const Attached<NewIssue>& issue) {
    insert_issue(work, job, issue.what, issue.act);
}

/// Puts in what is not there yet; how many.
template <class T>
int put_missing(Work& work, long job, const std::vector<T>& here, const std::vector<T>& brought) {
    std::multiset<std::string> known;
    for (const T& one : here) known.insert(mark(one));
    int count = 0;
    for (const T& one : brought) {
        const auto found = known.find(mark(one));
        if (found != known.end()) {
            known.erase(found);
            continue;
        }
        put(work, job, one);
        ++count;
    }
    return count;
}

int put_attached(Work& work, long job, const Parcel& here, const Parcel& parcel) {
    return put_missing(work, job, here.photos, parcel.photos) +
           put_missing(work, job, here.readings, parcel.readings) +
           put_missing(work, job, here.issues, parcel.issues);
}

/// A job under an id that is free here.
long put_new(Work& work, const std::string& id, const Parcel& parcel) {
    const long job = add_job(work, id, parcel.changed);
    work.run("UPDATE job SET archived = ? WHERE number = ?", parcel.archived ? 1l : 0l, job);
    put_revisions(work, job, {}, parcel);
    put_attached(work, job, {}, parcel);
    return job;
}

Imported carried_on(Work& work, const Parcel& here, const Parcel& parcel) {
    const long job = job_record(work, parcel.id).number;
    put_revisions(work, job, here, parcel);
    put_attached(work, job, here, parcel);
    return {parcel.id, parcel.id, "",
            fmt::format("carried on from revision {} to {}", here.current, parcel.current), true};
}

Imported left(Work& work, const Parcel& here, const Parcel& parcel) {
    const int added = put_attached(work, job_record(work, parcel.id).number, here, parcel);
    if (added == 0) return {parcel.id, parcel.id, "", "was here already", false};
    return {parcel.id, parcel.id, "",
            fmt::format("was here already; {} of its photos, readings and papers were not", added),
            true};
}

/// Both went on: the one of the text comes in beside the one here.
Imported beside(Work& work, const Parcel& parcel, const std::string& id, const Act& act) {
    const long job = put_new(work, id, parcel);
    const std::string text = text_of(work, job, parcel.current);
    const std::string words =
        fmt::format("brought in under a new id: the job {} went on differently here", parcel.id);
    add_revision(work, job, text, parcel.current, {act.at, act.by, words});
    return {id, parcel.id, "", words, true};
}

Imported bring_in(Work& work, const Parcel& parcel, const Act& act,
                  const std::function<std::string()>& fresh_id) {
    std::optional<Parcel> here;
    {
        Rows rows(work, "SELECT 1 FROM job WHERE id = ?", parcel.id);
        if (rows.next()) here = parcel_of(work, parcel.id);
    }
    switch (standing(here, parcel)) {
        case Standing::here_already:
            return left(work, *here, parcel);
        case Standing::further:
            return carried_on(work, *here, parcel);
        case Standing::apart:
            return beside(work, parcel, fresh_id(), act);
        case Standing::nowhere:
            break;
    }
    put_new(work, parcel.id, parcel);
    return {parcel.id, parcel.id, "", "new here", true};
}

}  // namespace

Outcome<std::vector<Imported>> import_text(
    Store& store, std::string_view text, const Act& act,
    const std::function<std::string()>& fresh_id,
    const std::function<Faults(const OwnPrices&)>& book_faults) {
    const auto parcels = read_parcels(text, book_faults);
    if (!parcels) return failed(parcels.error());
    Work work(store.database(), Work::Kind::writes);
    std::vector<Imported> all;
    for (const Parcel& parcel : parcels->jobs) {
        if (!work.sound()) break;
        Imported one = bring_in(work, parcel, act, fresh_id);
        one.title = state_of(work, one.id).title;
        all.push_back(std::move(one));
    }
    if (parcels->prices && !read_prices(work)) write_prices(work, *parcels->prices);
    return finished(work, std::move(all));
}

}  // namespace toft::store
