import unittest

from sample_tree import TreeTest
from sizes import faults


def function_of(lines):
    return "int f() {\n" + "  g();\n" * (lines - 2) + "}\n"


class Sizes(TreeTest):
    def test_the_limits_themselves_are_allowed(self):
        tree = self.tree({"src/a/a.cpp": function_of(60), "tests/a/a_test.cpp": "int a;\n" * 400})
        self.assertEqual(faults(tree), [])

    def test_a_function_too_long(self):
        for name in ("src/a/a.cpp", "ui/a/a.h", "tests/a/a_test.cpp"):
            with self.subTest(name):
                self.assert_one_fault(faults(self.tree({name: "\n" + function_of(61)})), f"{name}:2: 61 lines", "int f()")

    def test_a_file_too_long(self):
        for name in ("src/a/a.cpp", "ui/a/a.h", "tests/a/check.py", "tests/a/CMakeLists.txt"):
            with self.subTest(name):
                self.assert_one_fault(faults(self.tree({name: "\n" * 401})), f"{name}: 401 lines")

    def test_a_table_in_a_data_file_may_be_long(self):
        self.assertEqual(faults(self.tree({"tests/shim/vectors/a.json": "\n" * 900})), [])


if __name__ == "__main__":
    unittest.main()
