#pragma once
// Documents of ours held against their schemas.

#include "codec/schema_walk.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace toft::codec {

/// Judges `json` by a schema as far as keys required and known, types and words go.
inline void expect_fits(const Tree& root, Tree schema, const Tree& json, const std::string& at) {
    if (schema.contains("$ref")) {
        Tree named = root.at(Pointer(schema["$ref"].get<std::string>().substr(1)));
        for (const auto& [key, value] : schema.items()) named[key] = value;
        named.erase("$ref");
        schema = named;
    }
    if (schema.contains("enum")) {
        const Tree& words = schema["enum"];
        EXPECT_NE(std::find(words.begin(), words.end(), json), words.end()) << at << " = " << json;
        return;
    }
    EXPECT_TRUE(!json.is_null() || may_be(schema, "null")) << at;
    EXPECT_TRUE(!json.is_string() || may_be(schema, "string")) << at;
    EXPECT_TRUE(!json.is_boolean() || may_be(schema, "boolean")) << at;
    if (json.is_number()) {
        const bool whole = json.is_number_integer() && may_be(schema, "integer");
        EXPECT_TRUE(whole || may_be(schema, "number")) << at << " = " << json;
    }
    if (json.is_array()) {
        ASSERT_TRUE(may_be(schema, "array")) << at;
        for (const Tree& entry : json) expect_fits(root, schema["items"], entry, at + "/-");
    }
    if (!json.is_object()) return;
    ASSERT_TRUE(may_be(schema, "object")) << at;
    const Tree properties = schema.value("properties", Tree::object());
    const Tree rest = schema.value("additionalProperties", Tree());
    for (const Tree& key : schema.value("required", Tree::array())) {
        EXPECT_TRUE(json.contains(key.get<std::string>())) << at << " lacks " << key;
    }
    for (const auto& [key, value] : json.items()) {
        ASSERT_TRUE(properties.contains(key) || rest.is_object()) << at << " has " << key;
        expect_fits(root, properties.contains(key) ? properties[key] : rest, value, at + "/" + key);
    }
}

/// The text as the embedded schema of that name asks.
inline void expect_fits(const char* schema, const std::string& text) {
    const Tree root = schema_named(schema);
    expect_fits(root, root, Tree::parse(text), "");
}

}  // namespace toft::codec
