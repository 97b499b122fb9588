#include "outlook/later_json.h"

#include "codec/document.h"
#include "codec/fits.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::outlook {
namespace {

using codec::expect_fits;
using codec::Json;

TEST(Later, FitsItsSchemaAndKeepsEveryRow) {
    const site::Job job = support::example_job("tt-shed", support::catalogue());
    const auto answer = later(support::question_of(job));
    const std::string text = write_later(answer);
    expect_fits("later", text);
    const Json json = Json::parse(text);
    EXPECT_EQ(json["additions"].size(), support::catalogue().additions.size());
    EXPECT_EQ(json["key"], answer.scheme_key);
    EXPECT_EQ(json["ceilings"].size(), answer.ceilings.size());
}

TEST(Later, WithoutASoundSchemeSaysNull) {
    const std::string text = write_later({});
    expect_fits("later", text);
    EXPECT_TRUE(Json::parse(text)["scheme"].is_null());
}

}  // namespace
}  // namespace toft::outlook
