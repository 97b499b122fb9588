// What this server is, and how to talk to it.

#include "http/problem.h"
#include "http/target.h"
#include "server/openapi.h"
#include "server/told.h"
#include "tables/embedded.h"

namespace toft::server {

namespace {

Response about(Office& office, const Call& call) {
    auto bench = office.benches.take();
    if (!bench) return refused(bench.error());
    Json told = tree_of(request::answer(**bench, "about", "{}"));
    told["by"] = undone(call.request.headers.by).value_or("");
    told["lan"] = office.door.lan;
    told["paired"] =
        call.request.peer.loopback ||
        office.devices.known(secrets_in(call.request.headers.cookie, office.door.port));
    return json(told);
}

Response description(Office&, const Call&) {
    Response response;
    response.type = "application/json";
    response.body = openapi_text();
    return response;
}

Response schema(Office&, const Call& call) {
    const auto text = tables::embedded_text("schema/" + call.parts.at("name") + ".json");
    if (text.empty()) return problem(404, "there is no such schema");
    Response response;
    response.type = "application/schema+json";
    response.lasting = text;
    return response;
}

}  // namespace

std::vector<Route> about_routes() {
    return {
        {Method::get,
         "/api/about",
         "What this server is and who asks.",
         Entry::anyone,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "About", "The program, its data, and whether you are let in."}},
         about},
        {Method::get,
         "/api/openapi.json",
         "This description.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "", "OpenAPI 3.1."}},
         description},
        {Method::get,
         "/api/schemas/{name}",
         "The JSON Schema of a document, as `toft schema` prints it.",
         Entry::paired,
         Worker::at_once,
         Body::none,
         0,
         "",
         {},
         {{200, "application/schema+json", "", "The schema."},
          {404, "application/problem+json", "Problem", "There is no such schema."}},
         schema},
    };
}

}  // namespace toft::server
