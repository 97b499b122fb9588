#include "server/openapi.h"

#include "base/program.h"
#include "http/target.h"
#include "server/route.h"
#include "server/shapes.h"

#include <algorithm>

namespace toft::server {

namespace {

Json reference(const std::string& shape) { return {{"$ref", "#/components/schemas/" + shape}}; }

Json content(const char* type, const Json& schema) {
    Json media = Json::object();
    if (!schema.is_null()) media["schema"] = schema;
    return {{type, std::move(media)}};
}

Json parameter(const std::string& name, const char* where, bool required) {
    return {
        {"name", name}, {"in", where}, {"required", required}, {"schema", {{"type", "string"}}}};
}

Json parameters(const Route& route) {
    Json all = Json::array();
    const std::string path = route.path;
    for (std::size_t at = path.find('{'); at != std::string::npos; at = path.find('{', at + 1)) {
        all.push_back(parameter(path.substr(at + 1, path.find('}', at) - at - 1), "path", true));
    }
    for (const QueryPart& part : route.query) {
        Json one = parameter(part.name, "query", part.required);
        one["description"] = part.says;
        all.push_back(std::move(one));
    }
    if (!only_reads(route.method)) {
        Json page = parameter("toft-page", "header", true);
        page["schema"] = {{"const", "1"}};
        page["description"] = "Says that no form of another site sends this.";
        all.push_back(std::move(page));
        Json by = parameter("toft-by", "header", false);
        by["description"] = "Who does it, percent-encoded.";
        all.push_back(std::move(by));
    }
    return all;
}

Json body_of(const Route& route) {
    if (route.body == Body::picture) {
        Json kinds = Json::object();
        for (const char* type : {"image/jpeg", "image/png", "image/webp"}) {
            kinds[type] = Json::object();
        }
        return {{"required", true}, {"content", std::move(kinds)}};
    }
    return {{"required", true}, {"content", content("application/json", reference(route.shape))}};
}

/// What any route may answer besides its own: said once.
Json responses(const Route& route, const Json& done) {
    Json all = Json::object();
    for (const Gives& gives : route.gives) {
        Json& one = all[std::to_string(gives.status)];
        one["description"] = gives.says;
        if (!*gives.type) continue;
        const bool itself = gives.status == 200 && !done.is_null();
        const Json schema = itself ? done : *gives.shape ? reference(gives.shape) : Json();
        one["content"] = content(gives.type, schema);
    }
    all["default"] = {{"description",
                       "Refused before it came to this: 400, 401, 403, 405, 413, 415, 421, "
                       "431, 503, as a problem."},
                      {"content", content("application/problem+json", reference("Problem"))}};
    return all;
}

Json operation(const Route& route) {
    Json told = {{"summary", route.says}};
    const Json asked = parameters(route);
    if (!asked.empty()) told["parameters"] = asked;
    if (route.body == Body::json || route.body == Body::picture)
        told["requestBody"] = body_of(route);
    told["responses"] = responses(route, Json());
    return told;
}

Json verb_body(const request::Verb& verb) {
    Json properties = Json::object();
    Json required = Json::array();
    for (const request::Taken& taken : verb.takes) {
        properties[taken.key] = {{"type", taken.kind}, {"description", taken.says}};
        if (taken.required) required.push_back(taken.key);
    }
    return {{"type", "object"},
            {"additionalProperties", false},
            {"required", std::move(required)},
            {"properties", std::move(properties)}};
}

Json verb_answer(const request::Verb& verb) {
    if (*verb.schema) return {{"$ref", std::string("urn:toft:") + verb.schema + "/1"}};
    Json schema = {{"type", "object"}};
    if (*verb.gives) schema["properties"] = {{"format", {{"const", verb.gives}}}};
    return schema;
}

/// Each verb is a path of its own.
void add_verbs(Json& paths, const Route& route) {
    const std::string pattern = route.path;
    const std::string before = pattern.substr(0, pattern.find('{'));
    for (const request::Verb& verb : request::verbs()) {
        Route one = route;
        const std::string path = before + verb.name;
        one.path = path.c_str();
        one.says = verb.says;
        Json told = operation(one);
        if (verb.takes_long) told["description"] = route.says;
        told["requestBody"] = {{"required", true},
                               {"content", content("application/json", verb_body(verb))}};
        told["responses"] = responses(one, verb_answer(verb));
        paths[path]["post"] = std::move(told);
    }
}

std::string key_word(std::string word) {
    std::transform(word.begin(), word.end(), word.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    return word;
}

}  // namespace

std::string openapi_text() {
    Json paths = Json::object();
    for (const Route& route : routes()) {
        if (route.body == Body::work) {
            add_verbs(paths, route);
        } else {
            paths[route.path][key_word(method_name(route.method))] = operation(route);
        }
    }
    const Json whole = {
        {"openapi", "3.1.0"},
        {"info",
         {{"title", program_name},
          {"version", program_version},
          {"description",
           "What the page asks of `toft serve`. References to urn:toft:… are the schemas that "
           "`toft schema` prints, served at /api/schemas/{name}."}}},
        {"jsonSchemaDialect", "https://json-schema.org/draft/2020-12/schema"},
        {"paths", std::move(paths)},
        {"components", {{"schemas", shapes()}}}};
    return whole.dump(2) + "\n";
}

}  // namespace toft::server
