#pragma once
// One object of a `toft-store/1` text: keys asked for by kind, every fault noted with its pointer.
// Private to store.

#include "codec/document.h"

#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace toft::store {

class ParcelReader {
public:
    ParcelReader(const codec::Json& node, std::string pointer, Faults& faults);

    const std::string& pointer() const { return pointer_; }
    std::string pointer(const char* key) const { return codec::child_pointer(pointer_, key); }

    /// Empty where the key is missing, which is a fault unless `may_lack`.
    std::string text(const char* key, bool may_lack = false);
    /// A whole number from 1.
    long count(const char* key);
    /// The same, or null, or nothing.
    std::optional<long> maybe_count(const char* key);
    double number(const char* key);
    bool truth(const char* key);
    std::string base64(const char* key);
    /// The objects of a list; a missing list is empty. What is no object is a fault and left out.
    std::vector<ParcelReader> objects(const char* key);
    std::optional<ParcelReader> object(const char* key);
    /// A value of any kind; a null value where it is missing, which is a fault.
    const codec::Json& value(const char* key);

    Faults& faults() { return *faults_; }
    void fault(const char* code, const std::string& pointer, std::string says);

private:
    const codec::Json* find(const char* key, const char* kind, bool may_lack);

    const codec::Json* node_;
    std::string pointer_;
    Faults* faults_;
};

}  // namespace toft::store
