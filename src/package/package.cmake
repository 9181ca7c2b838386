# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# What is installed beside the program, and Debian's package of it. With LEGWORK_PACKAGE the program is built as Debian wants
# programs: hardened, and without a word of where it was built.

if(LEGWORK_PACKAGE)
  target_compile_options(legwork_flags INTERFACE
    -fstack-protector-strong -Wformat -Werror=format-security -U_FORTIFY_SOURCE -D_FORTIFY_SOURCE=2
    $<$<STREQUAL:${CMAKE_SYSTEM_PROCESSOR},x86_64>:-fcf-protection>
    -ffile-prefix-map=${PROJECT_SOURCE_DIR}=. -ffile-prefix-map=${PROJECT_BINARY_DIR}=.)
  target_link_options(legwork_flags INTERFACE -Wl,-z,relro -Wl,-z,now)
endif()

# The licence of all that is installed in one file, as Debian has it.
file(READ ${PROJECT_SOURCE_DIR}/src/package/LICENSE LEGWORK_LICENSE)
file(READ ${PROJECT_SOURCE_DIR}/fonts/OFL.txt LEGWORK_FONT_LICENSE)
file(CONFIGURE OUTPUT ${PROJECT_BINARY_DIR}/copyright @ONLY CONTENT
"legwork is under the MIT License; the typeface in share/legwork/fonts under its own, which follows it.

@LEGWORK_LICENSE@
--------------------------------------------------------------------------------

share/legwork/fonts:

@LEGWORK_FONT_LICENSE@")
install(FILES ${PROJECT_BINARY_DIR}/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})

# legwork_install(FILE FOLDER): as it is; in a package compressed.
function(legwork_install file folder)
  cmake_path(GET file FILENAME name)
  cmake_path(ABSOLUTE_PATH file BASE_DIRECTORY ${PROJECT_SOURCE_DIR})
  if(LEGWORK_PACKAGE)
    set(packed ${PROJECT_BINARY_DIR}/packed/${name}.gz)
    add_custom_command(OUTPUT ${packed} DEPENDS ${file} VERBATIM
      COMMAND ${CMAKE_COMMAND} -E make_directory ${PROJECT_BINARY_DIR}/packed
      COMMAND sh -c "exec gzip -9n <\"$1\" >\"$2\"" gzip ${file} ${packed})
    add_custom_target(packed_${name} ALL DEPENDS ${packed})
    set(file ${packed})
  endif()
  install(FILES ${file} DESTINATION ${folder})
endfunction()

legwork_install(src/cli/legwork.1 ${CMAKE_INSTALL_MANDIR}/man1)
legwork_install(src/cli/legwork-job.5 ${CMAKE_INSTALL_MANDIR}/man5)
install(FILES src/cli/completions/legwork.bash DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions RENAME legwork)
install(FILES src/cli/completions/legwork.fish DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d)
set(zsh_folder zsh/site-functions)
if(LEGWORK_PACKAGE) # where Debian's zsh looks for those of packages
  set(zsh_folder zsh/vendor-completions)
endif()
install(FILES src/cli/completions/_legwork DESTINATION ${CMAKE_INSTALL_DATADIR}/${zsh_folder})

if(LEGWORK_PACKAGE)
  set(LEGWORK_CONTACT "legwork contributors <contributors@legwork.invalid>" CACHE STRING "Who answers for the package")
  set(CPACK_PACKAGE_CONTACT "${LEGWORK_CONTACT}")
  configure_file(src/package/changelog ${PROJECT_BINARY_DIR}/changelog @ONLY)
  legwork_install(${PROJECT_BINARY_DIR}/changelog ${CMAKE_INSTALL_DOCDIR})

  set(CPACK_GENERATOR DEB)
  set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
  set(CPACK_STRIP_FILES ON)
  set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
  set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
  set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
  set(CPACK_DEBIAN_PACKAGE_SECTION utils)
  set(CPACK_DEBIAN_PACKAGE_DESCRIPTION "wiring of small buildings: balance, check and labels
Reads a list of the circuits of a cabin or a workshop, spreads them over the
two legs of the panel with a proof that no other plan is more even, checks
them against the electrical code (NEC, CE), and prints cable labels, tape
notes, the directory for the panel door and the load calculation.")
  include(CPack)
endif()
