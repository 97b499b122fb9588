// Jobs, their revisions, undo, and who wants to hear of them.

#include "door/secret.h"
#include "http/problem.h"
#include "server/told.h"
#include "store/transfer.h"

namespace toft::server {

namespace {

void tell_revision(Office& office, const store::JobState& state) {
    office.listeners.tell(state.id, "revision",
                          text_of({{"revision", state.revision}, {"by", state.changed_by}}));
}

Response list_jobs(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const auto text = call.query.find("find");
        const auto archived = call.query.find("archived");
        store::Find find;
        if (text != call.query.end()) find.text = text->second;
        find.archived = archived != call.query.end() && archived->second == "1";
        const auto rows = store::jobs(store, find);
        if (!rows) return refused(rows.error());
        Json list = Json::array();
        for (const store::JobRow& row : *rows) list.push_back(row_json(row));
        return json({{"jobs", std::move(list)}});
    });
}

Response make_job(Office& office, const Call& call) {
    Form form(call.request.body);
    const std::string job = form.document("job");
    std::string id = form.text("id", 64);
    const std::string what = form.text("what");
    if (!form.fine()) return refused(form.faults());
    if (id.empty()) {
        const Bits128 bits = random_bits();
        id = store::id_of(bits.high, bits.low);
    }
    return with_store(office, [&](store::Store& store) {
        const auto state = store::create(store, id, job, act_of(call, what));
        if (!state) return refused(state.error());
        Response made = json(state_json(*state), 201);
        made.headers.emplace_back("Location", "/api/jobs/" + id);
        return made;
    });
}

Response show_job(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const auto state = store::load(store, call.parts.at("id"));
        return state ? json(state_json(*state)) : refused(state.error());
    });
}

/// An empty text stands for a fact that is not stated.
Json value_json(const std::string& text) { return text.empty() ? Json() : tree_of(text); }

Response clash(const store::Saving& saving) {
    Json clashes = Json::array();
    for (const merge::Clash& one : saving.clashes) {
        clashes.push_back({{"pointer", one.pointer},
                           {"says", one.says},
                           {"was", value_json(one.was)},
                           {"yours", value_json(one.yours)},
                           {"theirs", value_json(one.theirs)}});
    }
    Response response =
        problem(409, "somebody else changed the same facts",
                "choose for each whether yours or theirs stands, then save on their revision");
    Json body = tree_of(response.body);
    body["clashes"] = std::move(clashes);
    body["current"] = state_json(saving.state);
    body["merged_job"] = tree_of(saving.merged_job);
    response.body = text_of(body);
    return response;
}

Response save_job(Office& office, const Call& call) {
    Form form(call.request.body);
    store::Edit edit{call.parts.at("id"), form.whole("base"), form.document("job")};
    const std::string what = form.text("what");
    if (!form.fine()) return refused(form.faults());
    return with_store(office, [&](store::Store& store) {
        const auto saving = store::save(store, edit, act_of(call, what));
        if (!saving) return refused(saving.error());
        if (!saving->saved) return clash(*saving);
        tell_revision(office, saving->state);
        Json state = state_json(saving->state);
        state["merged"] = saving->merged;
        return json(state);
    });
}

template <class Step>
Response step(Office& office, const Call& call, const Step& step_of) {
    Form form(call.request.body);
    const long base = form.whole("base");
    if (!form.fine()) return refused(form.faults());
    return with_store(office, [&](store::Store& store) {
        const auto state = step_of(store, call.parts.at("id"), base, act_of(call, ""));
        if (!state) return refused(state.error());
        tell_revision(office, *state);
        return json(state_json(*state));
    });
}

Response undo_job(Office& office, const Call& call) { return step(office, call, store::undo); }
Response redo_job(Office& office, const Call& call) { return step(office, call, store::redo); }

Response archive_job(Office& office, const Call& call) {
    Form form(call.request.body);
    const bool archived = form.flag("archived");
    if (!form.fine()) return refused(form.faults());
    return with_store(office, [&](store::Store& store) {
        const auto state = store::set_archived(store, call.parts.at("id"), archived);
        return state ? json(state_json(*state)) : refused(state.error());
    });
}

Response list_revisions(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const auto all = store::revisions(store, call.parts.at("id"));
        if (!all) return refused(all.error());
        Json list = Json::array();
        for (const store::Revision& one : *all) list.push_back(revision_json(one));
        return json({{"revisions", std::move(list)}});
    });
}

Response show_revision(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const auto one =
            store::revision(store, call.parts.at("id"), number_of(call.parts.at("revision")));
        return one ? json(revision_json(*one)) : refused(one.error());
    });
}

Response hear_job(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const std::string& id = call.parts.at("id");
        Response stream;
        stream.type = "text/event-stream";
        const auto secrets = secrets_in(call.request.headers.cookie, office.door.port);
        const std::string device = office.devices.named(secrets);
        stream.channel = office.listeners.listen(id, device);  // first, so that nothing is missed
        const bool elsewhere = office.door.lan && !call.request.peer.loopback;
        if (elsewhere && !office.devices.known(secrets)) {  // forgotten meanwhile
            return problem(401, "this device is not paired");
        }
        const auto state = store::load(store, id);
        if (!state) return refused(state.error());
        stream.channel->event("revision",
                              text_of({{"revision", state->revision}, {"by", state->changed_by}}));
        return stream;
    });
}

const Gives no_job = {404, "application/problem+json", "Problem", "There is no such job."};
const Gives no_fit = {422, "application/problem+json", "Problem", "The body does not hold water."};

std::vector<Route> saving_routes() {
    return {
        {Method::put,
         "/api/jobs/{id}",
         "Saves a job. What others saved since `base` is merged, fact by fact.",
         Entry::paired,
         Worker::desk,
         Body::json,
         small_body,
         "SaveJob",
         {},
         {{200, "application/json", "SavedJob", "Saved, merged where need was."},
          no_job,
          {409, "application/problem+json", "ClashProblem",
           "Both changed the same facts; nothing is saved."},
          no_fit},
         save_job},
        {Method::post,
         "/api/jobs/{id}/undo",
         "Takes back the last change.",
         Entry::paired,
         Worker::desk,
         Body::json,
         small_body,
         "Base",
         {},
         {{200, "application/json", "JobState", "The job as it was before."},
          no_job,
          {409, "application/problem+json", "Problem", "Nothing to undo, or the base is old."},
          no_fit},
         undo_job},
        {Method::post,
         "/api/jobs/{id}/redo",
         "Makes again what was undone last.",
         Entry::paired,
         Worker::desk,
         Body::json,
         small_body,
         "Base",
         {},
         {{200, "application/json", "JobState", "The job as it was before the undo."},
          no_job,
          {409, "application/problem+json", "Problem", "Nothing to redo, or the base is old."},
          no_fit},
         redo_job},
        {Method::post,
         "/api/jobs/{id}/archived",
         "Puts a job away, or takes it out again.",
         Entry::paired,
         Worker::desk,
         Body::json,
         small_body,
         "Archived",
         {},
         {{200, "application/json", "JobState", "Done."}, no_job, no_fit},
         archive_job},
    };
}

std::vector<Route> history_routes() {
    return {
        {Method::get,
         "/api/jobs/{id}/revisions",
         "Every revision of a job, newest first.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "RevisionList", "The revisions."}, no_job},
         list_revisions},
        {Method::get,
         "/api/jobs/{id}/revisions/{revision}",
         "One revision with its job.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "Revision", "The revision."},
          {404, "application/problem+json", "Problem", "There is no such job or revision."}},
         show_revision},
        {Method::get,
         "/api/jobs/{id}/events",
         "Tells of every new revision as it is saved: event `revision`, data {revision, by}.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "text/event-stream", "", "Events, until one side closes."}, no_job},
         hear_job},
    };
}

}  // namespace

std::vector<Route> job_routes() {
    std::vector<Route> all = {
        {Method::get,
         "/api/jobs",
         "The jobs, changed last first.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {{"find", false, "Words, each the beginning of a word of the job."},
          {"archived", false, "1: those put away, too."}},
         {{200, "application/json", "JobList", "The jobs."}},
         list_jobs},
        {Method::post,
         "/api/jobs",
         "Keeps a new job. The same job made twice under one id is made once.",
         Entry::paired,
         Worker::desk,
         Body::json,
         small_body,
         "NewJob",
         {},
         {{201, "application/json", "JobState", "Kept."},
          {409, "application/problem+json", "Problem", "Another job has that id."},
          no_fit},
         make_job},
        {Method::get,
         "/api/jobs/{id}",
         "A job as it stands.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "JobState", "The job."}, no_job},
         show_job},
    };
    for (Route& route : saving_routes()) all.push_back(std::move(route));
    for (Route& route : history_routes()) all.push_back(std::move(route));
    return all;
}

}  // namespace toft::server
