#include "codec/job.h"

#include "codec/job_parts.h"
#include "site/validate.h"

namespace toft::codec {

namespace {

site::Job read_whole(Reader& in, const tables::Catalogue& catalogue) {
    site::Job job;
    in.listed("format", {"toft-job/1"}, true);
    job.title = in.text("title");
    if (job.title.empty()) job.title = "Untitled job";
    const std::string rulebook = in.listed("rulebook", {"uk"});
    if (!rulebook.empty()) job.rulebook = rulebook;
    if (auto intake = in.object("intake", true)) read_intake(*intake, job);
    if (auto ground = in.object("ground")) read_ground(*ground, catalogue, job);
    read_buildings(in, job);
    read_runs(in, job);
    if (auto wishes = in.object("wishes")) read_wishes(*wishes, job);
    if (!in.objects("readings", 2000).empty()) {
        job.unused.push_back("test readings are kept in the job but not judged here");
    }
    in.finish();
    return job;
}

}  // namespace

Outcome<site::Job> read_job(std::string_view text, const tables::Catalogue& catalogue) {
    auto document = parse_document(text);
    if (!document) return failed(document.error());
    if (!document->is_object()) {
        return failed(Fault{"wrong-kind", "", "a job is one JSON object", "", {}});
    }
    Faults faults;
    Reader reader(*document, "", faults);
    site::Job job = read_whole(reader, catalogue);
    if (faults.empty()) faults = site::validate(job);
    if (!faults.empty()) return failed(std::move(faults));
    return job;
}

}  // namespace toft::codec
