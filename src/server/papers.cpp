// Papers as they are issued, frozen; and how one would look.

#include "http/problem.h"
#include "server/issue.h"
#include "server/told.h"
#include "store/settings.h"

namespace toft::server {

namespace {

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
    return make_papers({*stock, *office.parts.fonts, *call.request.gone, office.parts.milliseconds},
                       job, wish);
}

Response issue_papers(Office& office, const Call& call) {
    Form form(call.request.body);
    PapersWish wish = wish_of(form);
    wish.kinds = form.texts("kinds");
    if (!form.fine()) return refused(form.faults());
    return with_store(office, [&](store::Store& store) {
        const auto state = store::load(store, call.parts.at("id"));
        if (!state) return refused(state.error());
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

Response show_paper(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        auto file = store::paper(store, number_of(call.parts.at("issue")), call.parts.at("name"));
        if (!file) return refused(file.error());
        Response shown;
        shown.type = file->type;
        shown.headers = {{"Content-Disposition", "inline; filename=\"" + file->name + "\""},
                         {"Cache-Control", "private, max-age=31536000, immutable"}};
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
    Response shown;
    shown.type = "application/pdf";
    shown.headers = {
        {"Content-Disposition", "inline; filename=\"" + papers->files.front().name + "\""}};
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
         "Makes the papers of a job as it stands and freezes them.",
         Entry::paired,
         Worker::bench,
         Body::json,
         small_body,
         "NewIssue",
         {},
         {{201, "application/json", "Issue", "Issued; the files never change."},
          no_job,
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
