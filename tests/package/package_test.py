"""The package for Debian: made, opened beside the system, looked through, and both programs in it run."""

import pathlib
import shutil
import subprocess
import sys
import tempfile
import unittest

BUILD = pathlib.Path(sys.argv[1])
SOURCE = pathlib.Path(sys.argv[2])

EXPECTED = [
    "usr/bin/shimwright",
    "usr/bin/shimwright-cli",
    "usr/share/applications/shimwright.desktop",
    "usr/share/icons/hicolor/scalable/apps/shimwright.svg",
    "usr/share/metainfo/shimwright.metainfo.xml",
    "usr/share/man/man1/shimwright.1",
    "usr/share/man/man1/shimwright-cli.1",
    "usr/share/doc/shimwright/copyright",
]


def run(*words, **more):
    return subprocess.run([str(word) for word in words], capture_output=True, text=True, timeout=240, **more)


class Package(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        place = pathlib.Path(cls.folder.name)
        made = run("cpack", "--config", BUILD / "CPackConfig.cmake", "-B", place / "made",
                   "-D", f"CPACK_OUTPUT_FILE_PREFIX={place}", cwd=BUILD)
        assert made.returncode == 0, made.stdout + made.stderr
        (cls.package,) = place.glob("*.deb")
        cls.root = place / "root"
        opened = run("dpkg-deb", "-R", cls.package, cls.root)
        assert opened.returncode == 0, opened.stderr

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def environment(self):
        home = self.root / "home"
        home.mkdir(exist_ok=True)
        return {"PATH": "/usr/bin:/bin", "HOME": str(home), "QT_QPA_PLATFORM": "offscreen"}

    def test_holds_what_it_should_and_nothing_else(self):
        files = sorted(str(path.relative_to(self.root)) for path in self.root.rglob("*")
                       if path.is_file() and "DEBIAN" not in path.parts and "home" not in path.parts)
        self.assertEqual(files, sorted(EXPECTED))

    def test_needs_the_database_that_nothing_links(self):
        needs = run("dpkg-deb", "-f", self.package, "Depends").stdout
        self.assertIn("libqt6sql6-sqlite", needs)
        self.assertIn("libqt6widgets6", needs)
        self.assertIn("libsodium23", needs)

    def test_links_nothing_that_speaks_to_a_network(self):
        for program in ("shimwright", "shimwright-cli"):
            linked = run("readelf", "-d", self.root / "usr/bin" / program).stdout
            self.assertIn("libQt6Core", linked)
            self.assertNotRegex(linked, r"NEEDED.*(Network|curl|ssl|crypto\.so|ssh|WebEngine|HttpServer|WebSockets)")

    def test_the_command_line_does_a_job(self):
        store = self.root / "home-store.shimwright"
        record = self.root / "record.pdf"
        done = run(self.root / "usr/bin/shimwright-cli", "replay", SOURCE / "data/demo/01-smooth-day.json",
                   "--store", store, "--record", record, env=self.environment())
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertTrue(record.read_bytes().startswith(b"%PDF-"))

    def test_the_window_says_its_version(self):
        said = run(self.root / "usr/bin/shimwright", "--version", env=self.environment())
        self.assertEqual(said.returncode, 0, said.stderr)
        self.assertRegex(said.stdout, r"^shimwright \d+\.\d+\.\d+$")

    def test_removal_leaves_the_data_and_says_where_it_is(self):
        home = self.root / "home/.local/share/Shimwright"
        home.mkdir(parents=True, exist_ok=True)
        (home / "workshop.shimwright").write_text("kept")
        for word in ("remove", "purge"):
            said = run(self.root / "DEBIAN/postrm", word, env=self.environment())
            self.assertEqual(said.returncode, 0)
            self.assertIn(".local/share/Shimwright", said.stdout)
        self.assertEqual((home / "workshop.shimwright").read_text(), "kept")

    def test_the_files_for_the_desktop_are_in_order(self):
        checkers = {"desktop-file-validate": "usr/share/applications/shimwright.desktop"}
        if shutil.which("appstreamcli"):
            seen = run("appstreamcli", "validate", "--no-net", self.root / "usr/share/metainfo/shimwright.metainfo.xml")
            self.assertEqual(seen.returncode, 0, seen.stdout)
        for program, file in checkers.items():
            if shutil.which(program):
                seen = run(program, self.root / file)
                self.assertEqual(seen.returncode, 0, seen.stdout + seen.stderr)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
