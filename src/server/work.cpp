// The engine's verbs.

#include "http/problem.h"
#include "server/told.h"

#include <algorithm>

namespace toft::server {

namespace {

constexpr double between_progress = 100;  // ms

bool wants_events(const Request& request) {
    return request.headers.accept.find("text/event-stream") != std::string::npos;
}

bool is_faults(const std::string& answer) {
    return answer.substr(0, 64).find("\"toft-faults/1\"") != std::string::npos;
}

/// Faults are told as a problem that is a faults document, too: whoever asks the engine in the
/// browser reads it the same way.
Response of_answer(std::string answer) {
    Response response;
    response.type = "application/json";
    if (!is_faults(answer)) {
        response.body = std::move(answer);
        return response;
    }
    response = problem(422, "it cannot be worked out as it stands");
    Json body = tree_of(response.body);
    const Json faults = tree_of(answer);
    body["format"] = "toft-faults/1";
    body["faults"] = faults["faults"];
    if (!body["faults"].empty()) body["detail"] = body["faults"][0].value("says", "");
    response.body = text_of(body);
    return response;
}

struct Question {
    Office& office;
    std::string verb;
    std::string body;
};

std::string worked(const Question& question, const request::Asked& asked) {
    auto bench = question.office.benches.take();
    if (!bench) return codec::Json{{"format", "toft-faults/1"}, {"faults", Json::array()}}.dump();
    return request::answer(**bench, question.verb, question.body, asked);
}

/// Answers in events as it goes on; stops when nobody listens any more.
void tell_work(const Question& question, Channel& channel) {
    request::Asked asked;
    asked.milliseconds = question.office.parts.milliseconds;
    double last = asked.milliseconds();
    const double began = last;
    asked.progress = [&](double done, const std::string& words) {
        if (channel.gone()) return false;
        const double now = asked.milliseconds();
        if (now - began >= longest_work) return false;
        if (now - last >= between_progress) {
            last = now;
            channel.event("progress", text_of({{"done", done}, {"words", words}}));
        }
        return true;
    };
    std::string answer = worked(question, asked);
    while (!answer.empty() && answer.back() == '\n') answer.pop_back();
    channel.event("result", answer);
    channel.end();
}

Response work(Office& office, const Call& call) {
    const std::string& name = call.parts.at("verb");
    if (!request::find_verb(request::verbs(), name)) {
        return problem(404, "there is no such verb", "see /api/openapi.json for those there are");
    }
    const Question question{office, name, call.request.body};
    if (wants_events(call.request)) {
        Response stream;
        stream.type = "text/event-stream";
        stream.channel = std::make_shared<Channel>();
        stream.then = [question, channel = stream.channel] { tell_work(question, *channel); };
        return stream;
    }
    request::Asked asked;
    asked.milliseconds = office.parts.milliseconds;
    const double began = asked.milliseconds();
    asked.progress = [&](double, const std::string&) {
        return office.in_time(began, *call.request.gone);
    };
    return of_answer(worked(question, asked));
}

}  // namespace

std::vector<Route> work_routes() {
    return {
        {Method::post,
         "/api/verbs/{verb}",
         "Asks the engine. With `Accept: text/event-stream` long work tells how far it is: events "
         "`progress` {done, words}, at the end `result`; closing the connection stops it. "
         "After 20 s it stops, `levers` and `ask` once the solution under way is found; the answer "
         "is then the best so far and says `stopped`.",
         Entry::paired,
         Worker::bench,
         Body::work,
         work_body,
         "",
         {},
         {{200, "application/json", "", "The answer."},
          {404, "application/problem+json", "Problem", "There is no such verb."},
          {422, "application/problem+json", "Problem", "The body or its job is at fault."},
          {503, "application/problem+json", "Problem", "Too much waits to be worked out."}},
         work},
    };
}

}  // namespace toft::server
