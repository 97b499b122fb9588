#pragma once
// The parts of a job file, one reader each. Private to codec.

#include "codec/job_words.h"
#include "codec/reader.h"
#include "tables/catalogue.h"

namespace toft::codec {

/// A job that stands as a tree inside a larger document, as read_job of job.h reads one; pointers
/// of faults begin at the job.
Outcome<site::Job> read_job_tree(const Json& tree, const tables::Catalogue& catalogue);

void read_intake(Reader& in, site::Job& job);
void read_ground(Reader& in, const tables::Catalogue& catalogue, site::Job& job);
site::Electrode read_electrode(Reader& in);
void read_buildings(Reader& in, const tables::Catalogue& catalogue, site::Job& job);
void read_runs(Reader& in, const tables::Catalogue& catalogue, site::Job& job);
void read_wishes(Reader& in, site::Job& job);

/// {"standard", "curve", "rating_a"}. With a catalogue the device must be one of its own: a rating
/// or curve that the standard lacks is a fault that names those it has.
std::optional<site::NamedDevice> read_device(Reader& in, const char* key,
                                             const tables::Catalogue* catalogue = nullptr);

/// Faults of a (valid) job whose named cables, devices and places leave nothing to build with
/// (job_offer.cpp).
Faults nothing_on_offer(const site::Job& job, const tables::Catalogue& catalogue);

/// 1 or 3 phases; nothing when left out.
std::optional<int> read_phases(Reader& in);

}  // namespace toft::codec
