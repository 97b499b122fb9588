// What was measured on site.

#include "server/told.h"

namespace toft::server {

namespace {

Response list_readings(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const auto all = store::readings(store, call.parts.at("id"));
        if (!all) return refused(all.error());
        Json list = Json::array();
        for (const store::Reading& one : *all) list.push_back(reading_json(one));
        return json({{"readings", std::move(list)}});
    });
}

Response add_reading(Office& office, const Call& call) {
    constexpr double largest = 1e12;
    Form form(call.request.body);
    store::NewReading reading;
    reading.job = call.parts.at("id");
    reading.fact = form.needed("fact", 400);
    reading.value = form.number("value", {-largest, largest}, true).value_or(0);
    reading.unit = form.text("unit", 40);
    reading.instrument = form.text("instrument", 400);
    reading.note = form.text("note");
    reading.id = form.text("id", 64);
    reading.revision = form.maybe_whole("revision").value_or(0);
    if (!form.fine()) return refused(form.faults());
    return with_store(office, [&](store::Store& store) {
        const auto added = store::add_reading(store, reading, act_of(call, ""));
        return added ? json(reading_json(*added), 201) : refused(added.error());
    });
}

}  // namespace

std::vector<Route> reading_routes() {
    const Gives no_job = {404, "application/problem+json", "Problem",
                          "There is no such job or revision."};
    return {
        {Method::get,
         "/api/jobs/{id}/readings",
         "What was measured, oldest first.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "ReadingList", "The readings."}, no_job},
         list_readings},
        {Method::post,
         "/api/jobs/{id}/readings",
         "Keeps a reading. It is judged by nobody here.",
         Entry::paired,
         Worker::desk,
         Body::json,
         small_body,
         "NewReading",
         {},
         {{201, "application/json", "Reading", "Kept, or was before under that id."},
          no_job,
          {409, "application/problem+json", "Problem", "A reading of another job has that id."},
          {422, "application/problem+json", "Problem", "The body does not hold water."}},
         add_reading},
    };
}

}  // namespace toft::server
