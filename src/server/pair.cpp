// How other devices are let in, listed and put out again.

#include "door/code_picture.h"
#include "http/problem.h"
#include "server/told.h"

#include <cmath>

namespace toft::server {

namespace {

constexpr std::size_t knock_body = 4096;  // bytes: nobody is let in yet

Response no_lan() {
    return problem(404, "no other device can reach this server",
                   "start it with --lan to let devices of the network pair");
}

Response knock(Office& office, const Call& call) {
    if (!office.door.lan) return no_lan();
    Form form(call.request.body);
    const std::string code = form.needed("code", 40);
    const std::string name = form.text("name", 200);
    if (!form.fine()) return refused(form.faults());
    const Pairing::Answer answer = office.pairing.knock(code, office.seconds());
    const std::string wait = std::to_string(static_cast<long>(std::ceil(answer.wait)));
    if (answer.knock == Knock::wait) {
        Response response = problem(429, "too many wrong codes", "wait " + wait + " seconds");
        response.headers.emplace_back("Retry-After", wait);
        return response;
    }
    if (answer.knock == Knock::expired) {
        office.show_code_if_expired();
        return problem(403, "the code is no longer valid",
                       "a new one is on the screen of the machine that runs toft: type that one");
    }
    if (answer.knock == Knock::wrong) {
        Response response = problem(403, "that is not the code",
                                    "look again at the screen of the machine that runs toft");
        if (answer.wait > 0) response.headers.emplace_back("Retry-After", wait);
        return response;
    }
    return with_store(office, [&](store::Store& store) {
        const auto secret = office.devices.add(store, name, now_text());
        office.show_code();
        if (!secret) return refused(secret.error());
        Response let_in;
        let_in.status = 204;
        let_in.headers.emplace_back("Set-Cookie", cookie_of(*secret, office.door.port));
        return let_in;
    });
}

Response show_pairing(Office& office, const Call&) {
    if (!office.door.lan) return no_lan();
    Json addresses = Json::array();
    for (const std::string& one : office.door.addresses) addresses.push_back(one);
    const double now = office.seconds();
    return json({{"address", office.address()},
                 {"addresses", std::move(addresses)},
                 {"code", office.pairing.shown(now)},
                 {"seconds_left", std::floor(office.pairing.seconds_left(now))}});
}

Response renew(Office& office, const Call& call) {
    if (!office.door.lan) return no_lan();
    office.show_code();
    return show_pairing(office, call);
}

Response picture(Office& office, const Call&) {
    if (!office.door.lan) return no_lan();
    Response svg;
    svg.type = "image/svg+xml";
    const std::string code = office.pairing.shown(office.seconds());
    svg.body = code_as_svg(office.address() + (code.empty() ? "" : "#pair=" + code));
    return svg;
}

Response list_devices(Office& office, const Call&) {
    Json list = Json::array();
    for (const Device& one : office.devices.all()) {
        list.push_back({{"device", one.device}, {"name", one.name}, {"at", one.at}});
    }
    return json({{"devices", std::move(list)}});
}

Response forget_device(Office& office, const Call& call) {
    return with_store(office, [&](store::Store& store) {
        const auto there = office.devices.forget(store, call.parts.at("device"));
        if (!there) return refused(there.error());
        if (!*there) return problem(404, "there is no such device");
        office.listeners.put_out(call.parts.at("device"));
        Response done;
        done.status = 204;
        return done;
    });
}

const Gives not_open = {404, "application/problem+json", "Problem",
                        "The server was not started with --lan."};

std::vector<Route> device_routes() {
    return {
        {Method::get,
         "/api/pair/devices",
         "The devices that were let in.",
         Entry::this_machine,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "DeviceList", "The devices."}},
         list_devices},
        {Method::remove,
         "/api/pair/devices/{device}",
         "Puts a device out again.",
         Entry::this_machine,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{204, "", "", "It must pair anew."},
          {404, "application/problem+json", "Problem", "There is no such device."}},
         forget_device},
    };
}

}  // namespace

std::vector<Route> pair_routes() {
    std::vector<Route> all = {
        {Method::post,
         "/api/pair",
         "Lets a device in that knows the code on the screen of the machine.",
         Entry::anyone,
         Worker::desk,
         Body::json,
         knock_body,
         "Knock",
         {},
         {{204, "", "", "Let in: the cookie is to be sent from now on."},
          {403, "application/problem+json", "Problem", "Not the code, or no longer."},
          not_open,
          {422, "application/problem+json", "Problem", "The body does not hold water."},
          {429, "application/problem+json", "Problem", "Too many wrong codes: wait."}},
         knock},
        {Method::get,
         "/api/pair",
         "The code and the address, for the screen of the machine.",
         Entry::this_machine,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "PairingNow", "Code empty where it is no longer valid."},
          not_open},
         show_pairing},
        {Method::post,
         "/api/pair/renew",
         "A new code in place of the old one.",
         Entry::this_machine,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "PairingNow", "The new one."}, not_open},
         renew},
        {Method::get,
         "/api/pair/picture",
         "Address and code for a camera.",
         Entry::this_machine,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "image/svg+xml", "", "A QR code."}, not_open},
         picture},
    };
    for (Route& route : device_routes()) all.push_back(std::move(route));
    return all;
}

}  // namespace toft::server
