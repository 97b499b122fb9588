#include "server/issue.h"

#include "base/dates.h"
#include "base/nearest.h"
#include "codec/job.h"
#include "pack/lists.h"
#include "pack/pack.h"

#include <algorithm>

namespace toft::server {

namespace {

Fault fault(const char* code, const char* pointer, std::string says) {
    return {code, pointer, std::move(says), "", {}};
}

Faults faults_of(const PapersWish& wish) {
    Faults faults;
    std::vector<std::string> names;
    for (const paper::Kind& kind : paper::kinds()) names.emplace_back(kind.file);
    for (const std::string& kind : wish.kinds) {
        if (paper::find_kind(kind)) continue;
        faults.push_back(
            {"unknown-word", "/kinds", "there is no such paper", nearest_word(kind, names), names});
    }
    if (days_after(wish.date, 0).empty()) {
        faults.push_back(fault("out-of-range", "/date", "that is no day; write 2026-11-25"));
    }
    return faults;
}

bool wants(const PapersWish& wish, const char* kind) {
    return wish.kinds.empty() ||
           std::find(wish.kinds.begin(), wish.kinds.end(), kind) != wish.kinds.end();
}

/// Place of the wished scheme; past the end where nothing is sound; none where it is not there.
Outcome<std::size_t> place_of(const answer::Answer& answer, const PapersWish& wish) {
    const auto& schemes = answer.schemes;
    if (!wish.key.empty()) {
        for (std::size_t i = 0; i < schemes.size(); ++i) {
            if (schemes[i].key == wish.key) return i;
        }
        return failed(fault("unknown-scheme", "/key",
                            "no sound scheme has that key; ask for the answer again"));
    }
    const auto index = static_cast<std::size_t>(std::max(1, wish.rank) - 1);
    if (schemes.empty() || index < schemes.size()) return index;
    return failed(fault("unknown-scheme", "/rank", "the answer lists no scheme of that rank"));
}

std::string ending_of(const std::string& name) { return name.substr(name.find_last_of('.') + 1); }

std::string title_of(const std::string& name) {
    const std::string stem = name.substr(0, name.find_last_of('.'));
    if (name == pack::whole_name) return "All papers";
    if (const paper::Kind* kind = ending_of(name) == "pdf" ? paper::find_kind(stem) : nullptr) {
        return kind->name;
    }
    if (stem == "materials")
        return ending_of(name) == "csv" ? "Materials, as text" : "Materials, as a workbook";
    return stem == "route" ? "Route, for drawing programs" : "Trenches, for drawing programs";
}

Faults add_lists(pack::Pack& pack, const paper::Subject& subject, const PapersWish& wish) {
    const auto add = [&](Outcome<std::vector<pack::File>> files) {
        if (!files) return files.error();
        for (pack::File& file : *files) pack.files.push_back(std::move(file));
        return Faults();
    };
    if (wants(wish, "materials")) {
        Faults faults = add(pack::lists_of(subject, ware::Prices::without));
        if (!faults.empty()) return faults;
    }
    return wants(wish, "ground-sheet") ? add(pack::drawings_of(subject)) : Faults();
}

/// Every scheme is looked through only for a key that the usual list lacks.
answer::Answer designed(answer::Question question, const PapersWish& wish) {
    answer::Answer answer = answer::design(question);
    if (wish.key.empty() || answer.search.stopped || place_of(answer, wish)) return answer;
    question.all = true;
    return answer::design(question);
}

}  // namespace

Outcome<Papers> make_papers(const PapersOf& with, const std::string& text, const PapersWish& wish) {
    Faults faults = faults_of(wish);
    if (!faults.empty()) return failed(faults);
    const auto job = codec::read_job(text, with.stock.catalogue);
    if (!job) return failed(job.error());
    answer::Question question{with.stock.catalogue, with.stock.book, *job};
    question.milliseconds = with.milliseconds;
    question.go_on = [&](const answer::Progress&) { return with.go_on(); };
    const answer::Answer answer = designed(question, wish);
    if (answer.search.stopped) {
        return failed(
            fault("stopped", "", "stopped before every scheme was looked at: no paper is made"));
    }
    const auto index = place_of(answer, wish);
    if (!index) return failed(index.error());
    const bool scheme = *index < answer.schemes.size();
    std::vector<const paper::Kind*> kinds;
    for (const paper::Kind& kind : paper::kinds()) {
        if (wants(wish, kind.file) && (scheme || kind.without_scheme)) kinds.push_back(&kind);
    }
    if (kinds.empty()) {
        return failed(fault("no-sound-scheme", "",
                            "no scheme is sound, and that paper cannot do without one"));
    }
    paper::Subject subject{with.stock.catalogue, *job, answer, *index, wish.date};
    if (scheme) subject.workings = paper::workings_of(question, answer.schemes[*index]);
    auto pack = pack::pack_of(subject, kinds, with.fonts);
    if (!pack) return failed(pack.error());
    if (scheme) faults = add_lists(*pack, subject, wish);
    if (!faults.empty()) return failed(faults);
    Papers papers{{}, scheme ? answer.schemes[*index].words : ""};
    for (pack::File& file : pack->files) {
        papers.files.push_back({file.name, title_of(file.name), store::paper_type(file.name),
                                file.bytes.size(), std::move(file.bytes)});
    }
    return papers;
}

}  // namespace toft::server
