#include "gallery/pictures.h"

#include "curves/curves.h"
#include "diagram/single_line.h"
#include "picture/place.h"
#include "picture/stage.h"

namespace toft::gallery {

namespace {

drawing::Scene place(const Subject& s) {
    return picture::place_picture(s.job, s.answer, s.scheme_index,
                                  s.width > 0 ? s.width : picture::sheet_wide);
}

drawing::Scene single_line(const Subject& s) {
    return diagram::single_line(s.job, s.answer, s.scheme_index,
                                s.width > 0 ? s.width : diagram::paper_wide);
}

drawing::Scene curves(const Subject& s) {
    return curves::curves_picture(s.catalogue, s.job, s.answer, s.scheme_index,
                                  s.width > 0 ? s.width : curves::paper_wide);
}

}  // namespace

const std::vector<Picture>& pictures() {
    static const std::vector<Picture> all = {
        {"place", "house, run, outbuilding and cable to scale", place},
        {"single-line", "supply, devices and circuits with their symbols", single_line},
        {"curves", "how long its device takes and what the cable withstands", curves},
    };
    return all;
}

const Picture* find_picture(std::string_view name) {
    for (const Picture& picture : pictures()) {
        if (name == picture.name) return &picture;
    }
    return nullptr;
}

}  // namespace toft::gallery
