#pragma once
// Objects of JSON written field by field: much less code than the library's own lists of values,
// each of which it builds twice. Private to codec.

#include "codec/document.h"

#include <cstddef>
#include <initializer_list>
#include <string>
#include <type_traits>
#include <vector>

namespace toft::codec {

/// A key and what stands at it, named for as long as the object is being written.
class Field {
public:
    Field(const char* key, double x) : key_(key), kind_(Kind::number), number_(x) {}
    template <class T, class = std::enable_if_t<std::is_integral_v<T>>>
    Field(const char* key, T x)
        : key_(key),
          kind_(std::is_same_v<T, bool> ? Kind::truth : Kind::whole),
          whole_(static_cast<long long>(x)) {}
    Field(const char* key, std::nullptr_t) : key_(key), kind_(Kind::nothing), at_(nullptr) {}
    Field(const char* key, const char* x) : key_(key), kind_(Kind::word), at_(x) {}
    Field(const char* key, const std::string& x) : key_(key), kind_(Kind::text), at_(&x) {}
    Field(const char* key, const std::vector<std::string>& x)
        : key_(key), kind_(Kind::texts), at_(&x) {}
    Field(const char* key, Json&& x) : key_(key), kind_(Kind::tree), tree_(&x) {}
    Field(const char* key, const Json& x) : key_(key), kind_(Kind::copy), at_(&x) {}

private:
    friend Json object(std::initializer_list<Field> fields);
    Json value() const;

    enum class Kind : unsigned char {
        nothing,
        number,
        truth,
        whole,
        word,
        text,
        texts,
        tree,
        copy
    };
    const char* key_;
    Kind kind_;
    union {
        double number_;
        long long whole_;
        const void* at_;
        Json* tree_;
    };
};

/// The object of these fields, in their order. Keys are not repeated.
Json object(std::initializer_list<Field> fields);

}  // namespace toft::codec
