// Jobs out of this store and into another.

#include "door/secret.h"
#include "server/price_book.h"
#include "server/told.h"
#include "store/transfer.h"

namespace toft::server {

namespace {

Response as_file(const Outcome<std::string>& text, const std::string& name) {
    if (!text) return refused(text.error());
    Response file;
    file.type = "application/json";
    file.headers.emplace_back("Content-Disposition", "attachment; filename=\"" + name + "\"");
    file.body = *text;
    return file;
}

Response export_all(Office& office, const Call&) {
    return with_store(office, [&](store::Store& store) {
        return as_file(store::export_all(store), "toft-store.json");
    });
}

Response export_one(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const std::string& id = call.parts.at("id");
        return as_file(store::export_job(store, id), "toft-job-" + id + ".json");
    });
}

std::string fresh_id() {
    const Bits128 bits = random_bits();
    return store::id_of(bits.high, bits.low);
}

Response import_all(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const auto taken = store::import_text(
            store, call.request.body, act_of(call, "imported"), fresh_id,
            [&](const store::OwnPrices& prices) { return faults_of_book(office, prices); });
        if (!taken) return refused(taken.error());
        Json list = Json::array();
        for (const store::Imported& one : *taken) {
            list.push_back({{"id", one.id},
                            {"was_id", one.was_id},
                            {"title", one.title},
                            {"says", one.says},
                            {"written", one.written}});
        }
        return json({{"imported", std::move(list)}});
    });
}

}  // namespace

std::vector<Route> exchange_routes() {
    return {
        {Method::get,
         "/api/export",
         "Every job with all revisions, photos, readings and papers in one file.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "Transfer", "The file."},
          {413, "application/problem+json", "Problem", "Too much for one file: job by job."}},
         export_all},
        {Method::get,
         "/api/jobs/{id}/export",
         "One job in a file.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "Transfer", "The file."},
          {404, "application/problem+json", "Problem", "There is no such job."}},
         export_one},
        {Method::post,
         "/api/import",
         "Takes in all jobs of such a file, or none.",
         Entry::paired,
         Worker::desk,
         Body::json,
         import_body,
         "Transfer",
         {},
         {{200, "application/json", "ImportedList", "What became of each job."},
          {413, "application/problem+json", "Problem", "The file is larger than 64 MiB."},
          {422, "application/problem+json", "Problem", "The file does not hold water."}},
         import_all},
    };
}

}  // namespace toft::server
