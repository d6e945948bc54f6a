@echo off
rem Starts starchfilm on Windows.
rem
rem The first start keeps the loaded classes in an archive, and later starts take less time. Where no
rem archive can be written or read, everything works as well, only later.
rem
rem Tried with the command interpreter of Wine 8, not with Windows itself: from folders with spaces and
rem special characters, with and without JAVA_HOME, with quoted, empty and wild words, for exit codes 0, 1
rem and 2, with an archive that could and could not be made. A percent sign among the words is untried.
setlocal EnableExtensions DisableDelayedExpansion
set "home=%~dp0"
set "jar=%home%lib\starchfilm.jar"

rem The runtime that was packed with it, the one the user names, or the one on the PATH.
set "java="
set "named="
if defined JAVA_HOME set "named=%JAVA_HOME:"=%"
if exist "%home%runtime\bin\java.exe" set "java=%home%runtime\bin\java.exe"
if not defined java if defined named if exist "%named%\bin\java.exe" set "java=%named%\bin\java.exe"
if not defined java for %%I in (java.exe) do set "java=%%~$PATH:I"
if not defined java (
  echo starchfilm: no Java found; install Java 17 or newer, or set JAVA_HOME to where it is.>&2
  exit /b 1
)

rem An archive fits one release of Java only, so it carries its version. A Java that does not tell its
rem version without being started gets none.
set "version="
for %%I in ("%java%") do set "release=%%~dpI..\release"
if exist "%release%" for /f "usebackq tokens=1,2 delims==" %%K in ("%release%") do (
  if "%%K"=="JAVA_RUNTIME_VERSION" set "version=%%~L"
  if "%%K"=="JAVA_VERSION" if not defined version set "version=%%~L"
)

rem Little time is spent in a short command, so the compiler and the collector that start soonest win.
set "quick=-XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=20 -XX:+UseSerialGC -Xmn48m -XX:-UsePerfData -Dsun.reflect.inflationThreshold=1000 -Xlog:disable"
set "archive="
set "tried="
if not defined version goto start
set "cache="
if defined LOCALAPPDATA set "cache=%LOCALAPPDATA%\starchfilm\${project.version}"
set "archives=%home%lib"
call :look
if not defined archive if defined cache set "archives=%cache%"
if not defined archive call :look
set "archives=%home%lib"
if not defined archive call :make
if not defined archive if not defined tried if defined cache set "archives=%cache%"
if not defined archive if not defined tried call :make

:start
if not defined archive goto plain
"%java%" -Xshare:auto "-XX:SharedArchiveFile=%archive%" %quick% -Xlog:all=error:stderr -jar "%jar%" %*
exit /b %ERRORLEVEL%

:plain
"%java%" %quick% -Xlog:all=error:stderr -jar "%jar%" %*
exit /b %ERRORLEVEL%

rem An archive fits one place of the program only, too; that is written down beside it.
:look
if not exist "%archives%\java-%version%.jsa" goto :eof
if not exist "%archives%\java-%version%.txt" goto :eof
set "place="
set /p place=<"%archives%\java-%version%.txt"
if not defined place goto :eof
if "%place:"=%"=="%jar%" set "archive=%archives%\java-%version%.jsa"
goto :eof

rem Written aside and moved: Java crashes on half an archive. What a first start that was broken off
rem has left is swept away.
:make
for /f "delims=" %%D in ('dir /b /ad "%archives%\aside-*" 2^>nul') do rmdir /s /q "%archives%\%%D" >nul 2>nul
set "aside=%archives%\aside-%RANDOM%"
mkdir "%aside%" >nul 2>nul
if not exist "%aside%\" goto :eof
set "tried=yes"
echo "%jar%">"%aside%\place"
"%java%" "-XX:ArchiveClassesAtExit=%aside%\classes" %quick% -XX:+SuppressFatalErrorMessage -XX:-CreateCoredumpOnCrash -jar "%jar%" compare "%home%formulations\garden" --out - >nul 2>nul
rem Where the example is gone, the program ends with 2; a Java that fails ends with more, or below 0.
if %ERRORLEVEL% GTR 2 goto swept
if %ERRORLEVEL% LSS 0 goto swept
if not exist "%aside%\classes" goto swept
rem Java protects its archives from writing, and nothing can be moved over a protected file.
del /f /q "%archives%\java-%version%.jsa" >nul 2>nul
move /y "%aside%\classes" "%archives%\java-%version%.jsa" >nul 2>nul
if exist "%aside%\classes" goto swept
move /y "%aside%\place" "%archives%\java-%version%.txt" >nul 2>nul
set "archive=%archives%\java-%version%.jsa"
:swept
rmdir /s /q "%aside%" >nul 2>nul
goto :eof
