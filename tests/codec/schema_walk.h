#pragma once
// Walks a JSON Schema of ours: every key with the pointer at which a job holds it, and a whole job
// made of the schema alone.

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace toft::codec {

using Tree = nlohmann::ordered_json;
using Pointer = Tree::json_pointer;

/// One key of the job format.
struct SchemaKey {
    std::string pointer;  ///< of the key in whole_job()
    Tree schema;          ///< what stands there, references followed
    bool required = false;
};

/// The embedded schema of that name ("job", "answer", "faults").
Tree schema_named(const std::string& name);

/// All keys of the job format, parents before children; lists appear once more as "…/0".
const std::vector<SchemaKey>& job_keys();

/// A job in which every key of the format is stated, but those that exclude one another.
const Tree& whole_job();

/// The same, in which the key at `pointer` may stand: soil is stated by layers or by readings, and
/// an electrode is of one kind.
Tree whole_job_for(const std::string& pointer);

/// The smallest job that loads.
Tree small_job();

/// True when the schema lets that type stand there.
bool may_be(const Tree& schema, const char* type);

/// The words of an enumeration without null; empty when there is none.
std::vector<std::string> words_of(const Tree& schema);

}  // namespace toft::codec
