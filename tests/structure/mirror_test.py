import unittest

from mirror import EXCEPTIONS, faults
from sample_tree import TreeTest


class Mirror(TreeTest):
    def test_a_source_with_its_test(self):
        tree = self.tree({"src/shim/fit.cpp": "", "tests/shim/fit_test.cpp": "", "ui/a/b.cpp": "", "tests/ui/a/b_test.cpp": ""})
        self.assertEqual(faults(tree), [])

    def test_a_source_without_a_test(self):
        tree = self.tree({"src/shim/fit.cpp": "", "tests/shim/other_test.cpp": ""})
        self.assert_one_fault(faults(tree), "there is no tests/shim/fit_test.cpp")

    def test_an_exception_with_a_reason(self):
        tree = self.tree({"src/cli/main.cpp": "", EXCEPTIONS: "# why\nsrc/cli/main.cpp  only calls run()\n"})
        self.assertEqual(faults(tree), [])

    def test_an_exception_without_a_reason_excuses_nothing(self):
        tree = self.tree({"src/cli/main.cpp": "", EXCEPTIONS: "src/cli/main.cpp\n"})
        self.assert_one_fault(faults(tree), "there is no tests/cli/main_test.cpp")

    def test_a_source_that_is_part_of_another(self):
        line = "src/a/b.cpp  tested by tests/a/whole_test.cpp, whose second half it is\n"
        self.assertEqual(faults(self.tree({"src/a/b.cpp": "", "tests/a/whole_test.cpp": "", EXCEPTIONS: line})), [])
        self.assert_one_fault(faults(self.tree({"src/a/b.cpp": "", EXCEPTIONS: line})), "tests/a/whole_test.cpp, which is not")

    def test_an_exception_no_longer_needed(self):
        tested = self.tree({"src/a/b.cpp": "", "tests/a/b_test.cpp": "", EXCEPTIONS: "src/a/b.cpp reason\n"})
        self.assert_one_fault(faults(tested), "has its test now")
        self.assert_one_fault(faults(self.tree({EXCEPTIONS: "src/a/b.cpp reason\n"})), "is not there")


if __name__ == "__main__":
    unittest.main()
