#include "own_section.h"

#include <QFile>
#include <QPixmap>

#include "form_driver.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/workshop/logo.h"

using namespace shimwright;

namespace {

using Own = test::SectionBench<workshop::OwnSection>;

}  // namespace

TEST_CASE("name, address and logo of the workshop are changed, and a refusal loses nothing") {
  Own bench;
  const auto before = *bench.registers().workshop();
  CHECK(bench.there<QLineEdit>("field-name")->text().toStdString() == before->name);
  bench.type("field-name", "");
  bench.press("button-keep");
  CHECK(bench.said("form-told") == "A name is needed; enter one.");
  CHECK(*bench.registers().workshop() == before);
  bench.enter("field-name", "New Lane Gearboxes");
  CHECK(bench.there<QLineEdit>("field-address")->hasFocus());
  bench.type("field-address", "2 New Lane");
  bench.picture = bench.bench.file("logo.png");
  QPixmap picture(80, 40);
  picture.fill(Qt::black);
  REQUIRE(picture.save(bench.picture));
  bench.press("button-logo");
  CHECK(bench.there<QLabel>("logo")->isVisible());
  CHECK(bench.section->has_unsent());
  bench.all_fit_gloves();
  bench.press("button-keep");
  const auto kept = *bench.registers().workshop();
  CHECK(kept->name == "New Lane Gearboxes");
  CHECK(kept->address == "2 New Lane");
  CHECK(kept->logo == workshop::logo_from(bench.picture));
  CHECK_FALSE(bench.section->has_unsent());
  bench.press("button-no-logo");
  bench.press("button-keep");
  CHECK_FALSE((*bench.registers().workshop())->logo);
}

TEST_CASE("a file that is no picture is no logo") {
  Own bench;
  bench.picture = bench.bench.file("notes.txt");
  QFile notes(bench.picture);
  REQUIRE(notes.open(QIODevice::WriteOnly));
  notes.write("not a picture");
  notes.close();
  bench.press("button-logo");
  bench.press("button-keep");
  CHECK(bench.said("form-told").contains("PNG or JPEG"));
  bench.press("button-leave");
  CHECK_FALSE(bench.section->has_unsent());
  bench.picture = bench.bench.file("nowhere.png");
  bench.press("button-logo");
  CHECK(bench.said("form-told").contains("cannot be read"));
}
