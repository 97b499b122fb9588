// Every route answers as it is described, and the description is the one that is handed out.

#include "http/target.h"
#include "server/desk.h"
#include "server/fits.h"
#include "server/openapi.h"
#include "server/route.h"
#include "server/shapes.h"
#include "tables/embedded.h"

#include <set>

namespace toft::server {
namespace {

const std::string png = "\x89PNG\r\n\x1a\n and what follows";

class Routes : public Desk {
protected:
    /// Asks, and holds the answer against what the route says of that status.
    Response described(const Request& asked, unsigned status) {
        const Response answer = ask(asked);
        EXPECT_EQ(answer.status, status) << asked.target << ": " << answer.body;
        const Target target = *read_target(asked.target);
        for (const Route& route : routes()) {
            if (route.method != asked.method || !matched(route.path, target.parts)) continue;
            for (const Gives& gives : route.gives) {
                if (gives.status != status) continue;
                seen_.insert(std::string(method_name(route.method)) + " " + route.path);
                hold(answer, gives, asked.target);
                return answer;
            }
            ADD_FAILURE() << asked.target << " is not said to answer " << status;
        }
        return answer;
    }
    void hold(const Response& answer, const Gives& gives, const std::string& title) const {
        if (!*gives.type) {
            EXPECT_EQ(answer.body + std::string(answer.lasting), "") << title;
        } else if (std::string(gives.type).find('*') == std::string::npos) {
            EXPECT_EQ(answer.type, gives.type) << title;
        }
        if (!*gives.shape) return;
        const Json body = Json::parse(answer.body, nullptr, false);
        ASSERT_TRUE(body.is_object()) << title;
        for (const std::string& misfit : misfits(body, shapes().at(gives.shape), shapes())) {
            ADD_FAILURE() << title << misfit;
        }
    }
    Response described(Method method, const std::string& target, const Json& body,
                       unsigned status) {
        return described(request(method, target, body.is_null() ? "" : body.dump()), status);
    }

    void jobs();
    void belongings();
    void prices_and_exchange();
    void pairing_and_about();

    std::set<std::string> seen_;
};

void Routes::jobs() {
    described(Method::post, "/api/jobs", {{"job", demo()}, {"id", "a"}, {"what", "begun"}}, 201);
    Json other = demo();
    other["title"] = "Other";
    described(Method::post, "/api/jobs", {{"job", other}, {"id", "a"}}, 409);
    described(Method::post, "/api/jobs", {{"job", 1}}, 422);
    described(Method::get, "/api/jobs", {}, 200);
    described(Method::get, "/api/jobs?find=other", {}, 200);
    described(Method::get, "/api/jobs/a", {}, 200);
    described(Method::get, "/api/jobs/nobody", {}, 404);
    described(Method::put, "/api/jobs/a", {{"base", 1}, {"job", other}, {"what", "named"}}, 200);
    Json third = demo();
    third["title"] = "Third";
    described(Method::put, "/api/jobs/a", {{"base", 1}, {"job", third}}, 409);
    described(Method::put, "/api/jobs/a", {{"base", -1}, {"job", third}}, 422);
    described(Method::put, "/api/jobs/nobody", {{"base", 1}, {"job", third}}, 404);
    described(Method::post, "/api/jobs/a/undo", {{"base", 2}}, 200);
    described(Method::post, "/api/jobs/a/undo", {{"base", 2}}, 409);
    described(Method::post, "/api/jobs/a/redo", {{"base", 1}}, 200);
    described(Method::post, "/api/jobs/a/redo", {{"base", 2}}, 409);
    described(Method::post, "/api/jobs/a/archived", {{"archived", false}}, 200);
    described(Method::post, "/api/jobs/a/archived", {{"archived", 1}}, 422);
    described(Method::get, "/api/jobs/a/revisions", {}, 200);
    described(Method::get, "/api/jobs/a/revisions/1", {}, 200);
    described(Method::get, "/api/jobs/a/revisions/9", {}, 404);
    described(Method::get, "/api/jobs/a/revisions/one", {}, 404);
    described(Method::get, "/api/jobs/a/events", {}, 200);
    described(Method::get, "/api/jobs/nobody/events", {}, 404);
}

void Routes::belongings() {
    Request photo = request(Method::post, "/api/jobs/a/photos?fact=/intake&note=The%20board", png);
    photo.headers.type = "image/png";
    described(photo, 201);
    photo.target = "/api/jobs/a/photos?fact=/intake&revision=1&id=photo-1";
    const Json sent = Json::parse(described(photo, 201).body);
    EXPECT_EQ(Json::parse(described(photo, 201).body), sent) << "sent again, it is kept once";
    described(Method::remove, "/api/photos/" + std::to_string(sent["photo"].get<int>()), {}, 204);
    described(Method::post, "/api/jobs", {{"job", demo()}, {"id", "b"}}, 201);
    photo.target = "/api/jobs/a/photos?id=photo-2";
    described(photo, 201);
    photo.target = "/api/jobs/b/photos?id=photo-2";
    described(photo, 409);
    photo.target = "/api/jobs/a/photos?revision=99";
    described(photo, 404);
    photo.target = "/api/jobs/a/photos?revision=x";
    described(photo, 404);
    photo.body = "no picture";
    photo.target = "/api/jobs/a/photos";
    described(photo, 415);
    described(Method::get, "/api/jobs/a/photos", {}, 200);
    const Response bytes = described(Method::get, "/api/photos/1", {}, 200);
    EXPECT_EQ(bytes.body, png);
    EXPECT_EQ(bytes.type, "image/png");
    described(Method::remove, "/api/photos/1", {}, 204);
    described(Method::remove, "/api/photos/1", {}, 404);
    described(Method::get, "/api/photos/1", {}, 404);
    described(Method::get, "/api/jobs/nobody/photos", {}, 404);
    described(Method::post, "/api/jobs/a/readings",
              {{"fact", "/intake/ze_ohm"}, {"value", 0.21}, {"unit", "ohm"}}, 201);
    described(Method::post, "/api/jobs/a/readings", {{"fact", "/intake/ze_ohm"}}, 422);
    const Json held = {{"fact", "/intake/ze_ohm"}, {"value", 0.2}, {"revision", 1}, {"id", "r-1"}};
    const Json first = Json::parse(described(Method::post, "/api/jobs/a/readings", held, 201).body);
    EXPECT_EQ(Json::parse(described(Method::post, "/api/jobs/a/readings", held, 201).body), first);
    described(Method::post, "/api/jobs/b/readings", held, 409);
    EXPECT_EQ(get("/api/jobs/a/readings")["readings"].size(), 2u);
    described(Method::post, "/api/jobs/a/readings",
              {{"fact", "/intake/ze_ohm"}, {"value", 1}, {"revision", 99}}, 404);
    described(Method::get, "/api/jobs/a/readings", {}, 200);
    described(Method::post, "/api/jobs/a/papers", {{"kinds", {"labels"}}, {"date", "2026-11-29"}},
              201);
    described(Method::post, "/api/jobs/a/papers", {{"kinds", {"lables"}}}, 422);
    described(Method::post, "/api/jobs/a/papers", {{"kinds", {"labels"}}, {"revision", 99}}, 409);
    described(Method::post, "/api/jobs/nobody/papers", Json::object(), 404);
    described(Method::get, "/api/jobs/a/papers", {}, 200);
    described(Method::get, "/api/papers/1/labels.pdf", {}, 200);
    described(Method::get, "/api/papers/1/nothing.pdf", {}, 404);
    described(Method::post, "/api/preview", {{"job", demo()}, {"kind", "labels"}}, 200);
    described(Method::post, "/api/preview", {{"job", demo()}, {"kind", "lables"}}, 422);
}

void Routes::prices_and_exchange() {
    const Json book = Json::parse(described(Method::get, "/api/prices", {}, 200).body);
    EXPECT_FALSE(book["own"].get<bool>());
    described(Method::put, "/api/prices", {{"name", "mine.csv"}, {"csv", book["csv"]}}, 200);
    described(Method::put, "/api/prices", {{"name", "mine.csv"}, {"csv", "item\n"}}, 422);
    EXPECT_TRUE(get("/api/prices")["own"].get<bool>());
    described(Method::remove, "/api/prices", {}, 204);
    EXPECT_FALSE(get("/api/prices")["own"].get<bool>());
    const Response all = described(Method::get, "/api/export", {}, 200);
    described(Method::get, "/api/jobs/a/export", {}, 200);
    described(Method::get, "/api/jobs/nobody/export", {}, 404);
    described(request(Method::post, "/api/import", all.body), 200);
    described(Method::post, "/api/import", {{"format", "toft-store/9"}}, 422);
    const Json odd = {{"format", "toft-store/1"}, {"prices", {{"name", "x"}, {"csv", "item\n"}}}};
    const Json told = Json::parse(described(Method::post, "/api/import", odd, 422).body);
    EXPECT_EQ(told["faults"][0]["pointer"].get<std::string>().substr(0, 7), "/prices");
    EXPECT_FALSE(get("/api/prices")["own"].get<bool>()) << "a book that cannot be used stays out";
}

void Routes::pairing_and_about() {
    described(Method::get, "/api/about", {}, 200);
    described(Method::get, "/api/openapi.json", {}, 200);
    described(Method::get, "/api/schemas/job", {}, 200);
    described(Method::get, "/api/schemas/jbo", {}, 404);
    described(Method::get, "/api/pair", {}, 404);
    open_to_lan();
    described(Method::post, "/api/pair/renew", {}, 200);
    described(Method::get, "/api/pair", {}, 200);
    described(Method::get, "/api/pair/picture", {}, 200);
    const std::string code = office_->pairing.shown(office_->seconds());
    described(Method::post, "/api/pair", {{"code", "none"}}, 403);
    described(Method::post, "/api/pair", {{"name", "none"}}, 422);
    described(Method::post, "/api/pair", {{"code", code}, {"name", "Phone"}}, 204);
    const Json devices =
        Json::parse(described(Method::get, "/api/pair/devices", {}, 200).body)["devices"];
    described(Method::remove, "/api/pair/devices/" + devices[0]["device"].get<std::string>(), {},
              204);
    described(Method::remove, "/api/pair/devices/none", {}, 404);
    described(Method::post, "/api/verbs/about", Json::object(), 200);
    described(Method::post, "/api/verbs/first", {{"job", 1}}, 422);
    described(Method::post, "/api/verbs/abuot", Json::object(), 404);
}

TEST_F(Routes, EachOneAnswersAsItIsDescribed) {
    jobs();
    belongings();
    prices_and_exchange();
    pairing_and_about();
    for (const Route& route : routes()) {
        const std::string name = std::string(method_name(route.method)) + " " + route.path;
        EXPECT_EQ(seen_.count(name), 1u) << name << " was not tried";
    }
}

TEST_F(Routes, FaultsAreProblemsWithTheCodesOfTheCommands) {
    Json wrong = demo();
    wrong["intake"]["earthing"] = "TN-CS";
    const Response answer = ask(Method::post, "/api/verbs/first", {{"job", wrong}});
    EXPECT_EQ(answer.status, 422u);
    EXPECT_EQ(answer.type, "application/problem+json");
    const Json told = Json::parse(answer.body);
    EXPECT_EQ(told["format"], "toft-faults/1");
    EXPECT_EQ(told["faults"][0]["code"], "unknown-word");
    EXPECT_EQ(told["faults"][0]["pointer"], "/intake/earthing");
    EXPECT_EQ(told["faults"][0]["nearest"], "TN-C-S");
}

TEST_F(Routes, TheDescriptionThatIsKeptIsCurrent) {
    EXPECT_EQ(tables::embedded_text("schema/api.json"), openapi_text())
        << "write it anew: toft schema api > schema/api.json";
}

TEST_F(Routes, TheDescriptionNamesEveryRouteAndEveryReferenceIsThere) {
    const Json api = Json::parse(openapi_text());
    EXPECT_EQ(api["openapi"], "3.1.0");
    for (const Route& route : routes()) {
        if (route.body == Body::work) continue;
        EXPECT_TRUE(api["paths"].contains(route.path)) << route.path;
    }
    for (const request::Verb& verb : request::verbs()) {
        EXPECT_TRUE(api["paths"].contains(std::string("/api/verbs/") + verb.name)) << verb.name;
    }
    const std::string text = openapi_text();
    const std::string mark = "\"#/components/schemas/";
    int references = 0;
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) {
        const std::size_t begin = at + mark.size();
        const std::string name = text.substr(begin, text.find('"', begin) - begin);
        EXPECT_TRUE(api["components"]["schemas"].contains(name)) << name;
        ++references;
    }
    EXPECT_GT(references, 50);
}

TEST_F(Routes, EveryReferenceToASchemaIsToOneThatIsServed) {
    const std::string text = openapi_text();
    const std::string mark = "\"urn:toft:";
    int references = 0;
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) {
        const std::size_t begin = at + mark.size();
        const std::string name = text.substr(begin, text.find('/', begin) - begin);
        const Response schema = ask(request(Method::get, "/api/schemas/" + name));
        ASSERT_EQ(schema.status, 200u) << name;
        EXPECT_EQ(Json::parse(schema.lasting)["$id"], "urn:toft:" + name + "/1");
        ++references;
    }
    EXPECT_EQ(references, 4) << "of answer, ask, first and levers";
}

TEST_F(Routes, WhatIsChangedIsSignedAsWhoeverDoesItCallsThemselves) {
    Request made = request(Method::post, "/api/jobs", Json{{"job", demo()}}.dump());
    made.headers.by = std::string(200, 'x');
    EXPECT_EQ(done(ask(made), 201)["changed_by"], made.headers.by);
    for (const std::string& by : {std::string(201, 'x'), std::string("A%0AB"), std::string("A%FF"),
                                  std::string("A%"), std::string("A%00")}) {
        made.headers.by = by;
        const Response refused = ask(made);
        EXPECT_EQ(refused.status, 400u) << by;
        EXPECT_NE(refused.body.find("author"), std::string::npos) << by;
    }
    EXPECT_EQ(get("/api/jobs")["jobs"].size(), 1u);
}

TEST_F(Routes, TheWalkThatChecksShapesFindsWhatDoesNotFit) {
    const Json all = shapes();
    const Json state = kept(demo());
    EXPECT_TRUE(misfits(state, all["JobState"], all).empty());
    for (const auto& [key, value] : state.items()) {
        Json lacks = state;
        lacks.erase(key);
        EXPECT_EQ(misfits(lacks, all["JobState"], all).size(), 1u) << key;
        Json odd = state;
        odd[key] = nullptr;
        EXPECT_EQ(misfits(odd, all["JobState"], all).size(), 1u) << key;
    }
    Json more = state;
    more["more"] = 1;
    EXPECT_EQ(misfits(more, all["JobState"], all).size(), 1u);
    EXPECT_EQ(misfits({{"jobs", {{{"id", 1}}}}}, all["JobList"], all).size(), 6u);
}

}  // namespace
}  // namespace toft::server
