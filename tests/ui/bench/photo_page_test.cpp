#include "photo_page.h"

#include "picture_button.h"

#include <catch2/catch.hpp>

#include "page_driver.h"

using namespace shimwright;

namespace {

QString demo_photo(const char* name) {
  return QStringLiteral(SHIMWRIGHT_DATA_DIR "/demo/photos/") + QLatin1String(name);
}

bench::PhotoPage& photo_page(test::PageDriver& driver) {
  auto* page = qobject_cast<bench::PhotoPage*>(&driver.page());
  REQUIRE(page != nullptr);
  return *page;
}

}  // namespace

TEST_CASE("a photo is chosen from a file, with its words") {
  test::PageDriver driver("received-photos");
  photo_page(driver).set_file_picker([] { return demo_photo("levers.png"); });
  driver.type("field-caption", "as it came in");
  driver.page().refresh();
  CHECK(driver.part("field-caption")->text() == "as it came in");
  CHECK_FALSE(driver.page().commit());
  CHECK_FALSE(driver.page().findChild<QWidget*>("button-choose-picture")->isVisible());  // it would say the same twice
  driver.take();
  CHECK(driver.state() == "in_work");
  CHECK(driver.shows("1 of at least 2 kept"));
  CHECK(driver.shows("as it came in"));
  CHECK(driver.part("field-caption")->text().isEmpty());
  driver.take();
  CHECK(driver.state() == "accepted");
  CHECK(driver.left == 0);  // one more may follow
  CHECK(driver.page().actions().empty());
  CHECK(driver.part<QAbstractButton>("button-choose-picture")->isVisible());
  driver.press("button-choose-picture");
  CHECK(driver.shows("3 of at least 2 kept"));
}

TEST_CASE("no file chosen changes nothing, and what is no picture is refused") {
  test::PageDriver driver("received-photos");
  photo_page(driver).set_file_picker([] { return QString(); });
  driver.take();
  CHECK(driver.state() == "open");
  photo_page(driver).set_file_picker([] { return QStringLiteral(SHIMWRIGHT_DATA_DIR "/specs/D7-2.json"); });
  driver.take();
  CHECK(driver.state() == "open");
  CHECK(driver.refusals.size() == 1);
}

TEST_CASE("the newest pictures of the camera's folder are buttons; pressing one keeps it") {
  test::PageDriver driver("received-photos");
  CHECK(driver.page().findChildren<bench::PictureButton*>().empty());
  photo_page(driver).set_camera_folder(QStringLiteral(SHIMWRIGHT_DATA_DIR "/demo/photos"));
  CHECK(driver.page().findChildren<bench::PictureButton*>().size() == 5);
  driver.press("button-picture-levers.png");
  CHECK(driver.state() == "in_work");
  auto* other = driver.part<QAbstractButton>("button-picture-instruments.png");
  QTest::keyClick(other, Qt::Key_Return);
  CHECK(driver.state() == "accepted");
}
