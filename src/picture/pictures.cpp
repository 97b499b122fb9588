#include "picture/pictures.h"

#include "picture/place.h"

namespace toft::picture {

namespace {

drawing::Scene place(const Subject& s) { return place_picture(s.job, s.answer, s.scheme_index); }

}  // namespace

const std::vector<Picture>& pictures() {
    static const std::vector<Picture> all = {
        {"place", "house, run, outbuilding and cable to scale", place},
    };
    return all;
}

const Picture* find_picture(std::string_view name) {
    for (const Picture& picture : pictures()) {
        if (name == picture.name) return &picture;
    }
    return nullptr;
}

}  // namespace toft::picture
