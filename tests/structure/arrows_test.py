import unittest

from arrows import allowed_for, faults
from sample_tree import TreeTest


class Arrows(TreeTest):
    def test_the_reach_of_a_layer(self):
        self.assertEqual(allowed_for("sheet"), {"sheet", "shim", "metrology", "json", "quantity"})
        self.assertNotIn("store", allowed_for("print"))

    def test_of_the_window_only_the_shell_reaches_the_command_line(self):
        self.assertIn("cli", allowed_for("shell"))
        for layer in ("widgets", "bench", "past", "workshop"):
            self.assertNotIn("cli", allowed_for(layer))

    def test_what_is_allowed(self):
        tree = self.tree(
            {
                "src/shim/fit.cpp": '#include "fit.h"\n#include "shimwright/quantity/quantity.h"\n#include <vector>\n',
                "src/shim/CMakeLists.txt": "shimwright_layer(shim SOURCES fit.cpp LINKS shimwright::metrology)\n",
                "src/shim/include/shimwright/shim/fit.h": "",
                "src/store/open.cpp": '#include <QSqlDatabase>\n#include <sqlite3.h>\n#include "shimwright/job/job.h"\n',
                "tests/shim/fit_test.cpp": '#include "shimwright/shim/fit.h"\n',
                "tests/bench/window_bench.cpp": '#include "shimwright/shell/program.h"\n',
                "ui/shell/main.cpp": '#include "shimwright/bench/page.h"\n#include <QApplication>\n',
            }
        )
        self.assertEqual(faults(tree), [])

    def test_an_include_against_the_arrows(self):
        for name, text in (
            ("src/shim/a.cpp", '#include "shimwright/sheet/sheet.h"\n'),
            ("src/vehicle/a.cpp", '#  include "shimwright/shim/tray.h"\n'),
            ("src/job/include/shimwright/job/a.h", "#include <shimwright/record/record.h>\n"),
            ("src/print/a.cpp", '#include "shimwright/store/store.h"\n'),
            ("tests/json/a_test.cpp", '#include "shimwright/shim/tray.h"\n'),
            ("ui/widgets/a.cpp", '#include "shimwright/bench/page.h"\n'),
        ):
            with self.subTest(name):
                self.assert_one_fault(faults(self.tree({name: "\n" + text})), f"{name}:2", "against the arrows")

    def test_an_include_that_is_only_a_comment(self):
        self.assertEqual(faults(self.tree({"src/json/a.cpp": '// #include "shimwright/job/job.h"\n'})), [])

    def test_a_header_reached_by_a_path(self):
        tree = self.tree({"src/job/a.cpp": '#include "../sheet/private.h"\n'})
        self.assert_one_fault(faults(tree), "by their target")

    def test_qt_in_the_core(self):
        for header in ("QString", "QtCore/QString", "QtSql/QSqlQuery"):
            with self.subTest(header):
                tree = self.tree({"src/record/a.cpp": f"#include <{header}>\n"})
                self.assert_one_fault(faults(tree), "without Qt")
        tree = self.tree({"tests/job/CMakeLists.txt": "shimwright_test(job LINKS Qt6::Core)\n"})
        self.assert_one_fault(faults(tree), "without Qt")

    def test_the_database_outside_the_store(self):
        for name in ("src/print/a.cpp", "ui/past/a.cpp"):
            with self.subTest(name):
                self.assert_one_fault(faults(self.tree({name: "#include <QSqlQuery>\n"})), "only the store")

    def test_a_link_against_the_arrows(self):
        tree = self.tree(
            {"src/shim/CMakeLists.txt": "shimwright_layer(shim\n  LINKS shimwright::json # shimwright::store\n  shimwright::job)\n"}
        )
        self.assert_one_fault(faults(tree), "src/shim/CMakeLists.txt:3", "may not link shimwright::job")

    def test_a_public_header_out_of_its_place(self):
        tree = self.tree({"src/shim/include/shimwright/job/fit.h": ""})
        self.assert_one_fault(faults(tree), "include/shimwright/shim/")


if __name__ == "__main__":
    unittest.main()
