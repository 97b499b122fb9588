#pragma once
// Photos, each tied to a fact of a job.

#include "base/outcome.h"
#include "store/act.h"
#include "store/fact_place.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toft::store {

inline constexpr std::size_t largest_photo = 8u << 20;  ///< bytes

struct NewPhoto {
    std::string job;    ///< its id
    std::string fact;   ///< JSON pointer into `revision`; empty for the whole job
    std::string note;   ///< may be empty
    std::string type;   ///< image/jpeg, image/png or image/webp, and the bytes must begin so
    std::string bytes;  ///< 1 to `largest_photo`
    long revision = 0;  ///< that whoever took it had before them; 0 for the current one
    std::string
        id{};  ///< what whoever sends it calls it, so that it may be sent twice; may be empty
};

struct Photo {
    long photo = 0;  ///< number in this store, never given twice
    std::string job;
    FactPlace place;
    std::string note;
    std::string type;
    std::size_t size = 0;  ///< bytes
    std::string at;
    std::string by;
    std::string bytes;  ///< empty in a list
};

/// One whose id is here already is not kept again: it is the answer. Faults: `no-such-job`,
/// `no-such-revision`, `bad-pointer`, `bad-id`, `photo-type`, `photo-size`, all at once; `taken`:
/// the id is that of a photo of another job.
Outcome<Photo> add_photo(Store& store, const NewPhoto& photo, const Act& act);

/// All of a job, oldest first, without their bytes. Faults: `no-such-job`.
Outcome<std::vector<Photo>> photos(Store& store, const std::string& job);

/// One with its bytes. Faults: `no-such-photo`.
Outcome<Photo> photo(Store& store, long photo);

/// Takes it out for good. Faults: `no-such-photo`.
Faults delete_photo(Store& store, long photo);

}  // namespace toft::store
