#include "merge/same.h"

namespace toft::merge {

bool same(const Json& a, const Json& b) {
    if (a.is_object() && b.is_object()) {
        if (a.size() != b.size()) return false;
        for (const auto& [key, value] : a.items()) {
            const auto found = b.find(key);
            if (found == b.end() || !same(value, *found)) return false;
        }
        return true;
    }
    if (a.is_array() && b.is_array()) {
        if (a.size() != b.size()) return false;
        for (std::size_t i = 0; i < a.size(); ++i) {
            if (!same(a[i], b[i])) return false;
        }
        return true;
    }
    return a == b;
}

bool same(const Json* a, const Json* b) {
    if (!a || !b) return a == b;
    return same(*a, *b);
}

const Json* at(const Json* object, const std::string& key) {
    if (!object || !object->is_object()) return nullptr;
    const auto found = object->find(key);
    return found == object->end() ? nullptr : &*found;
}

}  // namespace toft::merge
