#include "chain_heads.h"

#include "shimwright/record/hash.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("each time something is stored the list of chain heads grows by a line") {
  Workbench bench;
  CHECK(got(bench.store().heads_end()) == HeadsEnd{});
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const HeadsEnd first = got(bench.store().heads_end());
  const std::string head = got(bench.store().load(job.id())).stored.back().hash;
  CHECK(first == HeadsEnd{1, list_hash("", 1, job.id(), 1, head)});
  went(job.try_to_add({job::Done{{"battery-off", 1}}, job::Noted{{}, "Rain"}}));
  const HeadsEnd second = got(bench.store().heads_end());
  const std::string next = got(bench.store().load(job.id())).stored.back().hash;
  CHECK(second == HeadsEnd{2, list_hash(first.list_hash, 2, job.id(), 3, next)});
}

TEST_CASE("an end from before is held as long as nothing before it was changed") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const HeadsEnd end = got(bench.store().heads_end());
  job.add(job::Done{{"battery-off", 1}});
  CHECK(got(bench.store().holds_end(HeadsEnd{})));
  CHECK(got(bench.store().holds_end(end)));
  CHECK_FALSE(got(bench.store().holds_end({end.position, "other"})));
  CHECK_FALSE(got(bench.store().holds_end({end.position + 9, end.list_hash})));
}

TEST_CASE("the hash of a line is over all that stands in it") {
  CHECK(list_hash("a", 2, "job", 3, "b") == record::sha256_hex("shimwright.heads.1\na\n2\njob\n3\nb"));
}

}  // namespace shimwright::store
