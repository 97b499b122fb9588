// Papers as they are issued, frozen; and how one would look.

#include "http/problem.h"
#include "server/issue.h"
#include "server/told.h"
#include "store/settings.h"

namespace toft::server {

namespace {

constexpr const char* pdf_type = "application/pdf";

std::string today() { return now_text().substr(0, 10); }

PapersWish wish_of(Form& form) {
    PapersWish wish;
    wish.key = form.text("key", 8000);
    wish.rank = static_cast<int>(form.number("rank", {1, 100000, true}).value_or(1));
    wish.date = form.text("date", 10);
    if (wish.date.empty()) wish.date = today();
    return wish;
}

/// With the user's own price book where there is one.
Outcome<Papers> made(Office& office, const Call& call, const std::string& job,
                     const PapersWish& wish, const std::optional<store::OwnPrices>& own) {
    if (!office.parts.fonts) return failed(office.parts.fonts.error());
    auto bench = office.benches.take();
    if (!bench) return failed(bench.error());
    Faults faults;
    const std::optional<std::string> csv =
        own ? std::optional<std::string>(own->csv) : std::nullopt;
    const request::Stock* stock = (*bench)->stock(own ? own->name : "", csv, faults);
    if (!stock) return failed(faults);
    const double began = office.parts.milliseconds();
    const auto go_on = [&] { return office.in_time(began, *call.request.gone); };
    return make_papers({*stock, *office.parts.fonts, go_on, office.parts.milliseconds}, job, wish);
}

/// Nobody is to sign papers for another job than the one before them.
Fault not_seen(long seen, long current) {
    return {"old-base",
            "/revision",
            "the job is at revision " + std::to_string(current) + " by now, not " +
                std::to_string(seen) + ": load it, look at it again and issue then",
            "",
            {}};
}

Response issue_papers(Office& office, const Call& call) {
    Form form(call.request.body);
    PapersWish wish = wish_of(form);
    wish.kinds = form.texts("kinds");
    const auto seen = form.maybe_whole("revision");
    if (!form.fine()) return refused(form.faults());
    return with_store(office, [&](store::Store& store) {
        const auto state = store::load(store, call.parts.at("id"));
        if (!state) return refused(state.error());
        if (seen && *seen != state->revision) return refused({not_seen(*seen, state->revision)});
        const auto own = store::own_prices(store);
        if (!own) return refused(own.error());
        auto papers = made(office, call, state->job, wish, *own);
        if (!papers) return refused(papers.error());
        const store::NewIssue issue{state->id, state->revision, std::move(papers->files)};
        const auto issued = store::issue_papers(store, issue, act_of(call, papers->scheme));
        return issued ? json(issue_json(*issued), 201) : refused(issued.error());
    });
}

Response list_issues(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const auto all = store::issues(store, call.parts.at("id"));
        if (!all) return refused(all.error());
        Json list = Json::array();
        for (const store::Issue& one : *all) list.push_back(issue_json(one));
        return json({{"issues", std::move(list)}});
    });
}

/// The headers of a paper, whatever the store says of its type: nothing in it may run as a page of
/// this server. (Browsers show no PDF within a sandbox, and run nothing of one outside their
/// viewer.)
Response paper_of(const std::string& name) {
    Response paper;
    paper.type = store::paper_type(name);
    const bool pdf = paper.type == pdf_type;
    if (paper.type.empty()) paper.type = "application/octet-stream";
    paper.headers = {
        {"Content-Disposition", (pdf ? "inline" : "attachment") + ("; filename=\"" + name + "\"")}};
    if (!pdf) paper.headers.emplace_back("Content-Security-Policy", "default-src 'none'; sandbox");
    return paper;
}

Response show_paper(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        auto file = store::paper(store, number_of(call.parts.at("issue")), call.parts.at("name"));
        if (!file) return refused(file.error());
        Response shown = paper_of(file->name);
        shown.headers.emplace_back("Cache-Control", "private, max-age=31536000, immutable");
        shown.body = std::move(file->bytes);
        return shown;
    });
}

Response preview(Office& office, const Call& call) {
    Form form(call.request.body);
    const std::string job = form.document("job");
    PapersWish wish = wish_of(form);
    wish.kinds = {form.needed("kind", 100)};
    if (!form.fine()) return refused(form.faults());
    std::optional<store::OwnPrices> own;
    {
        auto store = office.stores.take();
        if (!store) return refused(store.error());
        const auto kept = store::own_prices(**store);
        if (!kept) return refused(kept.error());
        own = *kept;
    }
    auto papers = made(office, call, job, wish, own);
    if (!papers) return refused(papers.error());
    Response shown = paper_of(papers->files.front().name);
    shown.body = std::move(papers->files.front().bytes);
    return shown;
}

}  // namespace

std::vector<Route> paper_routes() {
    const Gives no_job = {404, "application/problem+json", "Problem", "There is no such job."};
    return {
        {Method::get,
         "/api/jobs/{id}/papers",
         "What was issued, newest first.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "IssueList", "The issues."}, no_job},
         list_issues},
        {Method::post,
         "/api/jobs/{id}/papers",
         "Makes the papers of a job as it stands and freezes them. With `revision` only where that "
         "is "
         "the current one.",
         Entry::paired,
         Worker::bench,
         Body::json,
         small_body,
         "NewIssue",
         {},
         {{201, "application/json", "Issue", "Issued; the files never change."},
          no_job,
          {409, "application/problem+json", "Problem", "The job is at another revision by now."},
          {422, "application/problem+json", "Problem",
           "The job is at fault, nothing is sound, or the wish is none that can be met."}},
         issue_papers},
        {Method::get,
         "/api/papers/{issue}/{name}",
         "A file of an issue.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "*/*", "", "The frozen bytes."},
          {404, "application/problem+json", "Problem", "There is no such paper."}},
         show_paper},
        {Method::post,
         "/api/preview",
         "One paper of a job as it would look; kept nowhere.",
         Entry::paired,
         Worker::bench,
         Body::json,
         small_body,
         "Preview",
         {},
         {{200, "application/pdf", "", "The paper."},
          {422, "application/problem+json", "Problem",
           "The job is at fault, nothing is sound, or the wish is none that can be met."}},
         preview},
    };
}

}  // namespace toft::server
