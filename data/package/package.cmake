# `cpack --config build/release/CPackConfig.cmake`: one package for Debian with both programs.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME shimwright)
set(CPACK_PACKAGE_VENDOR Shimwright)
set(CPACK_PACKAGE_CONTACT "The Shimwright founders <shimwright@localhost>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY ${PROJECT_DESCRIPTION})
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
    "Leads through the job sheet of a dry dual-clutch pack, turns gauge trials, depths and floats into shim decisions, keeps \
every reading per vehicle and prints the signed record.")
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Loaded while running, so that nothing linked names it.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6sql6-sqlite")
set(CPACK_DEBIAN_PACKAGE_CONTROL_EXTRA ${CMAKE_CURRENT_LIST_DIR}/postrm)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION TRUE)
set(CPACK_OUTPUT_FILE_PREFIX ${CMAKE_BINARY_DIR}/package)
# What is packed was built before; packing builds nothing.
set(CMAKE_SKIP_INSTALL_ALL_DEPENDENCY TRUE)
install(FILES ${PROJECT_SOURCE_DIR}/LICENSE DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/shimwright RENAME copyright)
install(FILES ${PROJECT_SOURCE_DIR}/data/desktop/shimwright.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
include(CPack)
