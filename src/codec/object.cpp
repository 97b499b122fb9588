#include "codec/object.h"

namespace toft::codec {

Json Field::value() const {
    switch (kind_) {
        case Kind::nothing:
            return nullptr;
        case Kind::number:
            return number_;
        case Kind::truth:
            return whole_ != 0;
        case Kind::whole:
            return whole_;
        case Kind::word:
            return static_cast<const char*>(at_);
        case Kind::text:
            return *static_cast<const std::string*>(at_);
        case Kind::texts:
            return *static_cast<const std::vector<std::string>*>(at_);
        case Kind::tree:
            return std::move(*tree_);
        case Kind::copy:
            break;
    }
    return *static_cast<const Json*>(at_);
}

Json object(std::initializer_list<Field> fields) {
    Json::object_t made;
    made.reserve(fields.size());
    for (const Field& field : fields) made.emplace_back(field.key_, field.value());
    return made;
}

}  // namespace toft::codec
