#pragma once
// All that is served, without sockets: requests go straight to the service.

#include "cli/program.h"
#include "http/json.h"
#include "server/client.h"
#include "server/site.h"

#include <gtest/gtest.h>

#include <fstream>
#include <memory>

namespace toft::server {

inline Outcome<print::Fonts> test_fonts() {
    const std::string stem = "/usr/share/fonts/truetype/dejavu/DejaVuSans";
    return print::open_fonts(cli::text_of(stem + ".ttf"), cli::text_of(stem + "-Bold.ttf"));
}

inline std::string demo_text() { return cli::text_of(cli::example("demo")); }
inline Json demo() { return Json::parse(demo_text()); }

/// A service over a store in a folder of its own.
class Desk : public ::testing::Test {
protected:
    Desk() { open(); }

    /// As after a restart: nothing is remembered but what the store holds.
    void open() {
        const std::string path = (program_.folder() / "toft.sqlite").string();
        service_ = {};
        office_ = std::make_unique<Office>(
            OfficeParts{[path] { return store::open(path); }, test_fonts(),
                        [this](const std::string& text) { said_ += text; }, [] { return clock_; }});
        office_->door.port = 8377;
        auto store = office_->stores.take();
        ASSERT_TRUE(store) << store.error().front().says;
        ASSERT_TRUE(office_->devices.load(**store).empty());
        service_ = service_of(*office_, page_);
    }

    Request request(Method method, const std::string& target, std::string body = "") const {
        Request made;
        made.method = method;
        made.target = target;
        made.body = std::move(body);
        made.headers.hosts = 1;
        made.headers.host = "localhost:8377";
        made.headers.page = "1";
        made.headers.type = "application/json";
        made.headers.by = "Ada%20L.";
        made.peer.address = "127.0.0.1";
        return made;
    }
    /// From another device of the network.
    Request from_lan(Request made) const {
        made.peer = {"192.0.2.7", false};
        made.headers.host = "192.0.2.1:8377";
        return made;
    }
    void open_to_lan() {
        office_->door.lan = true;
        office_->door.addresses = {"192.0.2.1"};
    }

    Response ask(const Request& request) const {
        const Admission admission = service_.admit(request);
        if (admission.refusal) return *admission.refusal;
        EXPECT_LE(request.body.size(), admission.body_limit);
        Response response = service_.answer(request);
        if (response.then) response.then();
        return response;
    }
    Response ask(Method method, const std::string& target, const Json& body) const {
        return ask(request(method, target, body.is_null() ? "" : body.dump()));
    }
    Json get(const std::string& target) const {
        const Response response = ask(request(Method::get, target));
        EXPECT_EQ(response.status, 200u) << target << ": " << response.body;
        return Json::parse(response.body, nullptr, false);
    }
    Json done(const Response& response, unsigned status = 200) const {
        EXPECT_EQ(response.status, status) << response.body;
        return Json::parse(response.body, nullptr, false);
    }
    /// A kept job; its state.
    Json kept(const Json& job, const std::string& id = "studio") const {
        return done(ask(Method::post, "/api/jobs", {{"id", id}, {"job", job}}), 201);
    }
    static std::string header(const Response& response, const std::string& name) {
        for (const auto& [key, value] : response.headers) {
            if (key == name) return value;
        }
        return "";
    }

    static inline double clock_ = 0;  ///< milliseconds
    cli::Program program_;
    std::string said_;
    PageFiles page_ = page_files();
    std::unique_ptr<Office> office_;
    Service service_;
};

}  // namespace toft::server
