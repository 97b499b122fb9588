#include "server/fits.h"

namespace toft::server {

namespace {

bool is(const Json& document, const std::string& type) {
    if (type == "object") return document.is_object();
    if (type == "array") return document.is_array();
    if (type == "string") return document.is_string();
    if (type == "integer") return document.is_number_integer();
    if (type == "number") return document.is_number();
    if (type == "boolean") return document.is_boolean();
    return type == "null" && document.is_null();
}

bool fits_type(const Json& document, const Json& type) {
    if (type.is_string()) return is(document, type);
    for (const Json& one : type) {
        if (is(document, one)) return true;
    }
    return false;
}

using Misfits = std::vector<std::string>;

void add(Misfits& all, Misfits more) { all.insert(all.end(), more.begin(), more.end()); }

Misfits object_misfits(const Json& document, const Json& schema, const Json& components,
                       const std::string& place) {
    Misfits all;
    for (const Json& key : schema.value("required", Json::array())) {
        if (!document.contains(key.get<std::string>())) {
            all.push_back(place + ": lacks " + key.get<std::string>());
        }
    }
    const Json properties = schema.value("properties", Json::object());
    for (const auto& [key, value] : document.items()) {
        if (properties.contains(key)) {
            add(all, misfits(value, properties[key], components, place + "/" + key));
        } else if (schema.contains("additionalProperties")) {
            all.push_back(place + ": has " + key);
        }
    }
    return all;
}

}  // namespace

Misfits misfits(const Json& document, const Json& schema, const Json& components,
                const std::string& place) {
    if (schema.contains("$ref")) {
        const std::string name = schema["$ref"];
        if (name.rfind("urn:", 0) == 0) {
            return document.is_object() ? Misfits() : Misfits{place + ": no object"};
        }
        return misfits(document, components.at(name.substr(name.find_last_of('/') + 1)), components,
                       place);
    }
    Misfits all;
    if (schema.contains("type") && !fits_type(document, schema["type"])) {
        return {place + ": is no " + schema["type"].dump()};
    }
    if (schema.contains("const") && document != schema["const"]) {
        all.push_back(place + ": is not " + schema["const"].dump());
    }
    if (document.is_object()) add(all, object_misfits(document, schema, components, place));
    if (document.is_array() && schema.contains("items")) {
        for (std::size_t i = 0; i < document.size(); ++i) {
            add(all,
                misfits(document[i], schema["items"], components, place + "/" + std::to_string(i)));
        }
    }
    return all;
}

}  // namespace toft::server
