#include "store/parcel.h"
#include "store/parcel_reader.h"
#include "store/transfer.h"

#include <fmt/format.h>

#include <map>
#include <set>

namespace toft::store {

namespace {

constexpr codec::Bounds bounds{largest_transfer, codec::deepest_document + 8, codec::most_keys,
                               most_values};

constexpr std::size_t longest_scheme = 20'000;  // bytes of the words for what an issue shows

Act act_of(ParcelReader& reader, std::size_t most_words) {
    Act act{reader.text("at"), reader.text("by", true), ""};
    if (most_words > 0) act.what = reader.text("what", true);
    check_act(act, most_words, reader.pointer(), reader.faults());
    return act;
}

ParcelRevision revision_of(ParcelReader& reader) {
    ParcelRevision revision;
    revision.revision = reader.count("revision");
    revision.parent = reader.maybe_count("parent");
    revision.redo = reader.maybe_count("redo");
    revision.act = act_of(reader, longest_words);
    const codec::Json& job = reader.value("job");
    if (job.is_null()) return revision;
    revision.text = job.dump();
    for (const Fault& fault : unfit_job(revision.text)) {
        reader.fault(fault.code.c_str(), reader.pointer("job") + fault.pointer, fault.says);
    }
    return revision;
}

/// Numbers rise, what a revision was made from is before it, and what redo leads to was made from
/// it.
void check_chain(ParcelReader& reader, const Parcel& parcel) {
    std::map<long, std::optional<long>> parents;
    long last = 0;
    for (std::size_t i = 0; i < parcel.revisions.size(); ++i) {
        const ParcelRevision& one = parcel.revisions[i];
        const std::string at = fmt::format("{}/revisions/{}", reader.pointer(), i);
        if (one.revision <= last) {
            reader.fault("bad-revision", at, "revisions are listed by rising numbers");
        }
        if (one.parent && !parents.count(*one.parent)) {
            reader.fault("bad-revision", at, "the revision it was made from is not before it");
        }
        last = std::max(last, one.revision);
        parents[one.revision] = one.parent;
    }
    for (std::size_t i = 0; i < parcel.revisions.size(); ++i) {
        const ParcelRevision& one = parcel.revisions[i];
        if (!one.redo) continue;
        const auto next = parents.find(*one.redo);
        if (next == parents.end() || next->second != one.revision) {
            reader.fault("bad-revision", fmt::format("{}/revisions/{}", reader.pointer(), i),
                         "what redo leads to was not made from it");
        }
    }
    if (!parents.count(parcel.current)) {
        reader.fault("bad-revision", reader.pointer("current"), "there is no such revision");
    }
}

long revision_in(ParcelReader& reader, const Parcel& parcel) {
    const long revision = reader.count("revision");
    for (const ParcelRevision& one : parcel.revisions) {
        if (one.revision == revision) return revision;
    }
    reader.fault("bad-revision", reader.pointer("revision"), "there is no such revision");
    return revision;
}

void take_photos(ParcelReader& job, Parcel& parcel, Faults& faults) {
    for (ParcelReader& reader : job.objects("photos")) {
        NewPhoto photo{parcel.id, reader.text("fact", true), reader.text("note", true),
                       reader.text("type"), reader.base64("base64")};
        check_photo(photo, reader.pointer(), faults);
        const long revision = revision_in(reader, parcel);
        parcel.photos.push_back({std::move(photo), revision, act_of(reader, 0)});
    }
}

void take_readings(ParcelReader& job, Parcel& parcel, Faults& faults) {
    for (ParcelReader& reader : job.objects("readings")) {
        NewReading reading{parcel.id,
                           reader.text("fact"),
                           reader.number("value"),
                           reader.text("unit", true),
                           reader.text("instrument", true),
                           reader.text("note", true)};
        check_reading(reading, reader.pointer(), faults);
        const long revision = revision_in(reader, parcel);
        parcel.readings.push_back({std::move(reading), revision, act_of(reader, 0)});
    }
}

void take_issues(ParcelReader& job, Parcel& parcel, Faults& faults) {
    for (ParcelReader& reader : job.objects("issues")) {
        NewIssue issue{parcel.id, revision_in(reader, parcel), {}};
        for (ParcelReader& file : reader.objects("files")) {
            std::string bytes = file.base64("base64");
            const std::size_t size = bytes.size();
            issue.files.push_back({file.text("name"), file.text("title", true), file.text("type"),
                                   size, std::move(bytes)});
        }
        check_issue(issue, reader.pointer(), faults);
        const long revision = issue.revision;
        parcel.issues.push_back({std::move(issue), revision, act_of(reader, longest_scheme)});
    }
}

Parcel parcel_in(ParcelReader& reader, Faults& faults) {
    Parcel parcel;
    parcel.id = reader.text("id");
    if (!parcel.id.empty() && !good_id(parcel.id)) {
        reader.fault("bad-id", reader.pointer("id"), bad_id(parcel.id).says);
    }
    parcel.archived = reader.truth("archived");
    parcel.current = reader.count("current");
    parcel.changed = {reader.text("changed_at"), reader.text("changed_by", true), ""};
    check_act(parcel.changed, 0, reader.pointer(), faults);
    for (ParcelReader& revision : reader.objects("revisions")) {
        parcel.revisions.push_back(revision_of(revision));
    }
    check_chain(reader, parcel);
    take_photos(reader, parcel, faults);
    take_readings(reader, parcel, faults);
    take_issues(reader, parcel, faults);
    return parcel;
}

OwnPrices book_of(ParcelReader& reader,
                  const std::function<Faults(const OwnPrices&)>& book_faults) {
    OwnPrices prices{reader.text("name"), reader.text("csv")};
    for (const Fault& fault : book_faults ? book_faults(prices) : Faults()) {
        reader.fault(fault.code.c_str(), reader.pointer() + fault.pointer, fault.says);
    }
    return prices;
}

}  // namespace

Outcome<Parcels> read_parcels(std::string_view text,
                              const std::function<Faults(const OwnPrices&)>& book_faults) {
    const auto document = codec::parse_document(text, bounds);
    if (!document) return failed(document.error());
    Faults faults;
    ParcelReader reader(*document, "", faults);
    const std::string format = reader.text("format");
    if (!format.empty() && format != "toft-store/1") {
        faults.push_back({"format",
                          "/format",
                          "this is " + format + "; a file of exported jobs belongs here",
                          "",
                          {"toft-store/1"}});
    }
    Parcels parcels;
    std::set<std::string> ids;
    for (ParcelReader& job : reader.objects("jobs")) {
        if (faults.size() >= codec::most_faults) break;
        parcels.jobs.push_back(parcel_in(job, faults));
        if (!ids.insert(parcels.jobs.back().id).second) {
            job.fault("bad-id", job.pointer("id"), "two jobs of this file have this id");
        }
    }
    if (auto prices = reader.object("prices")) {
        parcels.prices = book_of(*prices, book_faults);
    }
    if (!faults.empty()) return failed(std::move(faults));
    return parcels;
}

}  // namespace toft::store
