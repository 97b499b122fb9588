#include "codec/job.h"

#include "codec/job_parts.h"
#include "site/validate.h"

#include <algorithm>

namespace toft::codec {

namespace {

/// "Supply to Shed and Gym": of a job that has no title.
std::string title_of(const site::Job& job) {
    constexpr std::size_t most = 3;
    std::vector<std::string> names;
    for (const site::Building& building : job.buildings) {
        if (!building.origin) names.push_back(building.name.empty() ? building.id : building.name);
    }
    if (names.empty()) return "Supply of a house";
    std::string title = "Supply to ";
    const std::size_t shown = names.size() > most ? most : names.size();
    for (std::size_t i = 0; i < shown; ++i) {
        const bool last = i + 1 == names.size();
        title += (i == 0 ? "" : last ? " and " : ", ") + names[i];
    }
    return names.size() > most ? title + " and others" : title;
}

site::Job read_whole(Reader& in, const tables::Catalogue& catalogue) {
    site::Job job;
    in.listed("format", {"toft-job/1"}, true);
    job.title = in.text("title");
    const std::string rulebook = in.listed("rulebook", {"uk"});
    if (!rulebook.empty()) job.rulebook = rulebook;
    if (auto intake = in.object("intake", true)) read_intake(*intake, job);
    if (auto ground = in.object("ground")) read_ground(*ground, catalogue, job);
    read_buildings(in, catalogue, job);
    read_runs(in, catalogue, job);
    if (job.title.empty()) job.title = title_of(job);
    if (auto wishes = in.object("wishes")) read_wishes(*wishes, job);
    if (!in.objects("readings", 2000).empty()) {
        job.unused.push_back("test readings are kept in the job but not judged here");
    }
    in.finish();
    return job;
}

/// True when one pointer is the other or lies below it.
bool related(const std::string& a, const std::string& b) {
    const std::string& shorter = a.size() < b.size() ? a : b;
    const std::string& longer = a.size() < b.size() ? b : a;
    return longer.compare(0, shorter.size(), shorter) == 0 &&
           (longer.size() == shorter.size() || longer[shorter.size()] == '/');
}

bool ends_with(const std::string& text, std::string_view end) {
    return text.size() >= end.size() &&
           std::string_view(text).substr(text.size() - end.size()) == end;
}

/// True when a fault of reading may be why the parts of a job do not fit together: it lies at the
/// same place, or it hides a building, its id or that it is the origin.
bool may_explain(const Fault& read, const Fault& cross) {
    const bool inside = read.pointer.rfind("/buildings", 0) == 0;
    const bool whole = inside && std::count(read.pointer.begin(), read.pointer.end(), '/') <= 2;
    if (whole) return true;
    if (cross.code == "origin") {
        return inside && (read.code == "unknown-key" || ends_with(read.pointer, "/at"));
    }
    return related(read.pointer, cross.pointer) || (inside && ends_with(read.pointer, "/id"));
}

/// Kinds of circuit that need state neither load nor device.
std::vector<site::CircuitKind> kinds_without_load(const tables::Demand& demand) {
    std::vector<site::CircuitKind> kinds;
    for (std::size_t i = 0; i < site::words<site::CircuitKind>().size(); ++i) {
        const auto kind = static_cast<site::CircuitKind>(i);
        const std::string& load = tables::load_of_kind(demand, site::word(kind)).load;
        const bool gives = load == tables::load_generation || load == tables::load_storage;
        if (gives || tables::find_usual(demand, site::word(kind))) kinds.push_back(kind);
    }
    return kinds;
}

/// Adds what does not fit together, without what follows from the faults already found.
void add_cross_faults(const site::Job& job, const tables::Demand& demand, Faults& faults) {
    const std::size_t read = faults.size();
    for (Fault& cross : site::validate(job, kinds_without_load(demand))) {
        const bool explained =
            std::any_of(faults.begin(), faults.begin() + static_cast<std::ptrdiff_t>(read),
                        [&cross](const Fault& fault) { return may_explain(fault, cross); });
        if (!explained && faults.size() < most_faults) faults.push_back(std::move(cross));
    }
}

}  // namespace

Outcome<site::Job> read_job(std::string_view text, const tables::Catalogue& catalogue) {
    const auto document = parse_document(text);
    if (!document) return failed(document.error());
    return read_job_tree(*document, catalogue);
}

Outcome<site::Job> read_job_tree(const Json& tree, const tables::Catalogue& catalogue) {
    if (!tree.is_object()) {
        return failed(Fault{"wrong-kind", "", "a job is one JSON object", "", {}});
    }
    Faults faults;
    Reader reader(tree, "", faults);
    site::Job job = read_whole(reader, catalogue);
    add_cross_faults(job, catalogue.demand, faults);
    if (faults.empty()) faults = nothing_on_offer(job, catalogue);
    if (!faults.empty()) return failed(std::move(faults));
    return job;
}

}  // namespace toft::codec
