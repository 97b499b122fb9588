// Photos on facts of a job.

#include "server/told.h"

namespace toft::server {

namespace {

Response list_photos(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const auto all = store::photos(store, call.parts.at("id"));
        if (!all) return refused(all.error());
        Json list = Json::array();
        for (const store::Photo& one : *all) list.push_back(photo_json(one));
        return json({{"photos", std::move(list)}});
    });
}

std::string in_query(const Call& call, const char* name) {
    const auto found = call.query.find(name);
    return found == call.query.end() ? "" : found->second;
}

Response add_photo(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const std::string& sent = call.request.headers.type;
        const std::string revision = in_query(call, "revision");
        const store::NewPhoto photo{
            call.parts.at("id"),    in_query(call, "fact"),
            in_query(call, "note"), sent.substr(0, sent.find(';')),
            call.request.body,      revision.empty() ? 0 : number_of(revision),
            in_query(call, "id")};
        const auto added = store::add_photo(store, photo, act_of(call, ""));
        if (!added) return refused(added.error());
        Response made = json(photo_json(*added), 201);
        made.headers.emplace_back("Location", "/api/photos/" + std::to_string(added->photo));
        return made;
    });
}

Response show_photo(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        auto photo = store::photo(store, number_of(call.parts.at("photo")));
        if (!photo) return refused(photo.error());
        Response shown;
        shown.type = photo->type;
        shown.body = std::move(photo->bytes);
        shown.headers = {{"Content-Security-Policy", "default-src 'none'; sandbox"},
                         {"Cache-Control", "private, max-age=31536000, immutable"}};
        return shown;
    });
}

Response delete_photo(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const Faults faults = store::delete_photo(store, number_of(call.parts.at("photo")));
        if (!faults.empty()) return refused(faults);
        Response done;
        done.status = 204;
        return done;
    });
}

}  // namespace

std::vector<Route> photo_routes() {
    const Gives no_job = {404, "application/problem+json", "Problem",
                          "There is no such job or revision."};
    const Gives no_photo = {404, "application/problem+json", "Problem", "There is no such photo."};
    return {
        {Method::get,
         "/api/jobs/{id}/photos",
         "The photos of a job, oldest first.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "PhotoList", "The photos, without their bytes."}, no_job},
         list_photos},
        {Method::post,
         "/api/jobs/{id}/photos",
         "Keeps a photo: image/jpeg, image/png or image/webp of at most 8 MiB.",
         Entry::paired,
         Worker::desk,
         Body::picture,
         photo_body,
         "",
         {{"fact", false, "JSON pointer of the fact it shows; left out: the whole job."},
          {"note", false, "Words to it."},
          {"revision", false, "That the pointer was meant in; left out: the current one."},
          {"id", false, "What the device calls it: sent again, it is kept once."}},
         {{201, "application/json", "Photo", "Kept, or was before under that id."},
          no_job,
          {409, "application/problem+json", "Problem", "A photo of another job has that id."},
          {413, "application/problem+json", "Problem", "It is larger than 8 MiB."},
          {415, "application/problem+json", "Problem", "It is no such picture."},
          {422, "application/problem+json", "Problem", "The pointer is none."}},
         add_photo},
        {Method::get,
         "/api/photos/{photo}",
         "The bytes of a photo.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "image/*", "", "The photo."}, no_photo},
         show_photo},
        {Method::remove,
         "/api/photos/{photo}",
         "Takes a photo out for good.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{204, "", "", "It is gone."}, no_photo},
         delete_photo},
    };
}

}  // namespace toft::server
