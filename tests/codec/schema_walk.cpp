#include "codec/schema_walk.h"

#include "tables/embedded.h"

#include <algorithm>

namespace toft::codec {

namespace {

/// `node` with what its $ref names laid under it; "properties" are laid over each other key by key.
Tree resolved(const Tree& root, const Tree& node) {
    const auto ref = node.find("$ref");
    if (ref == node.end()) return node;
    Tree out = root.at(Pointer(ref->get<std::string>().substr(1)));
    for (const auto& [key, value] : node.items()) {
        if (key == "properties" && out.contains("properties")) {
            for (const auto& [name, inner] : value.items()) {
                for (const auto& [word, x] : inner.items()) out["properties"][name][word] = x;
            }
        } else if (key != "$ref") {
            out[key] = value;
        }
    }
    return out;
}

class Walk {
public:
    std::vector<SchemaKey> keys;

    Walk() : root_(schema_named("job")) { object("", root_); }

private:
    void node(const std::string& pointer, const Tree& raw, bool required) {
        const Tree schema = resolved(root_, raw);
        keys.push_back({pointer, schema, required});
        if (schema.contains("properties") && !may_be(schema, "number")) object(pointer, schema);
        if (schema.contains("items")) node(pointer + "/0", schema.at("items"), false);
    }

    void object(const std::string& pointer, const Tree& schema) {
        const Tree required = schema.value("required", Tree::array());
        for (const auto& [key, inner] : schema.at("properties").items()) {
            const auto found = std::find(required.begin(), required.end(), Tree(key));
            node(pointer + "/" + key, inner, found != required.end());
        }
    }

    Tree root_;
};

Tree sample(const Tree& root, const Tree& raw) {
    const Tree schema = resolved(root, raw);
    if (schema.contains("enum")) return schema.at("enum").at(0);
    if (schema.contains("minimum")) {
        const double low = schema.at("minimum").get<double>();
        const double high = schema.at("maximum").get<double>();
        return schema.contains("multipleOf") ? low : (low + high) / 2;
    }
    if (may_be(schema, "boolean")) return true;
    if (may_be(schema, "string")) return "text";
    if (may_be(schema, "array")) {
        const auto count = std::max<std::size_t>(1, schema.value("minItems", std::size_t{1}));
        return Tree(count, sample(root, schema.at("items")));
    }
    if (!may_be(schema, "object")) return nullptr;
    Tree object = Tree::object();
    if (!schema.contains("properties")) return object;
    for (const auto& [key, inner] : schema.at("properties").items()) {
        object[key] = sample(root, inner);
    }
    return object;
}

}  // namespace

Tree schema_named(const std::string& name) {
    return Tree::parse(tables::embedded_text("schema/" + name + ".json"));
}

const std::vector<SchemaKey>& job_keys() {
    static const std::vector<SchemaKey> keys = Walk().keys;
    return keys;
}

namespace {

Tree make_whole_job() {
    const Tree root = schema_named("job");
    Tree job = sample(root, root);
    Tree& house = job["buildings"][0];
    house["id"] = "house";
    house.erase("load_w");  // contradicts load_a
    job["buildings"].push_back({{"id", "shed"}, {"load_a", 10}});
    job["runs"][0]["from"] = "house";
    job["runs"][0]["to"] = "shed";
    job["runs"][0]["legs"][0]["method"] = "buried direct";  // in the trench that is named
    job["runs"][0]["legs"][0]["live_mm2"] = 10;             // a section and a rating that are made
    job["runs"][0]["device"] = {{"standard", "BS EN 60898"}, {"curve", "B"}, {"rating_a", 32}};
    job["runs"][0]["fed_from"] = "spare way";
    Tree& existing = job["runs"][0]["existing"];
    existing["family"] = "flat twin and earth";  // the only one with two cores and one to protect
    existing["live_mm2"] = 10;
    existing["cpc_mm2"] = 4;
    existing["device"] = job["runs"][0]["device"];
    job["runs"][0]["legs"][0]["family"] = "armoured XLPE copper";
    job["runs"][0]["legs"][0]["cores"] = 2;
    job["runs"][0]["phases"] = 1;
    job["intake"]["phases"] = 1;
    job["buildings"][0]["circuits"][0]["phases"] = 1;
    job["intake"]["board"]["takes"] = "BS EN 60898";
    job["wishes"]["offer"] = {"armoured XLPE copper"};  // and that something is left to build with
    job["wishes"]["devices"] = {"BS EN 60898"};
    job["wishes"]["smallest_core_mm2"] = 1.5;
    job["ground"].erase("layers");  // instead of resistivity and readings
    job["ground"]["schlumberger"][0]["potential_pins_m"] = 1;
    Tree& electrode = job["buildings"][0]["electrode"];
    electrode["length_m"] = 3;
    electrode["fall_of_potential"][0]["potential_m"] = 1;
    for (const char* key : {"width_m", "meshes_along", "meshes_across", "membrane"}) {
        electrode.erase(key);  // no rods
    }
    return job;
}

}  // namespace

const Tree& whole_job() {
    static const Tree job = make_whole_job();
    return job;
}

Tree whole_job_for(const std::string& pointer) {
    Tree job = whole_job();
    if (pointer.rfind("/ground/layers", 0) == 0) {
        for (const char* key : {"resistivity_ohm_m", "wenner", "schlumberger"}) {
            job["ground"].erase(key);
        }
        job["ground"]["layers"] = Tree::parse(
            R"([{"resistivity_ohm_m": 100, "thickness_m": 1}, {"resistivity_ohm_m": 100}])");
    }
    const std::string electrode = "/buildings/0/electrode/";
    if (pointer.rfind(electrode, 0) != 0) return job;
    const std::string key = pointer.substr(electrode.size());
    const bool meshed = key == "meshes_along" || key == "meshes_across" || key == "width_m";
    if (!meshed && key != "membrane") return job;
    Tree& e = job["buildings"][0]["electrode"];
    e["kind"] = meshed ? "mesh" : "foundation";
    for (const char* of_rods : {"rods", "arrangement", "spacing_m"}) e.erase(of_rods);
    return job;
}

Tree small_job() {
    return Tree::parse(R"({"format": "toft-job/1", "intake": {"earthing": "TN-S"},
        "buildings": [{"id": "house", "at": "origin"}, {"id": "shed", "load_a": 10}],
        "runs": [{"id": "feed", "from": "house", "to": "shed",
                  "legs": [{"method": "clipped", "length_m": 20}]}]})");
}

bool may_be(const Tree& schema, const char* type) {
    const auto found = schema.find("type");
    if (found == schema.end()) return false;
    if (found->is_string()) return *found == type;
    return std::find(found->begin(), found->end(), Tree(type)) != found->end();
}

std::vector<std::string> words_of(const Tree& schema) {
    std::vector<std::string> words;
    for (const Tree& word : schema.value("enum", Tree::array())) {
        if (word.is_string()) words.push_back(word.get<std::string>());
    }
    return words;
}

}  // namespace toft::codec
