@echo off
rem Starts starchfilm on Windows.
rem
rem The first start keeps the loaded classes in an archive, and later starts take less time. Where no
rem archive can be written or read, everything works as well, only later.
setlocal
set "home=%~dp0"
set "jar=%home%lib\starchfilm.jar"

rem The runtime that was packed with it, the one the user names, or the one on the PATH.
set "java="
if exist "%home%runtime\bin\java.exe" set "java=%home%runtime\bin\java.exe"
if not defined java if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java for %%I in (java.exe) do set "java=%%~$PATH:I"
if not defined java (
  echo starchfilm: no Java found; install Java 17 or newer, or set JAVA_HOME to where it is. 1>&2
  exit /b 1
)

rem An archive fits one release of Java only, so it carries its version. A Java that does not tell its
rem version without being started gets none.
set "version="
for %%I in ("%java%") do set "release=%%~dpI..\release"
if exist "%release%" for /f "usebackq tokens=2 delims==" %%V in (`findstr /b "JAVA_VERSION=" "%release%"`) do set "version=%%~V"

set "quick=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xlog:disable"
set "share="
if not defined version goto start
set "cache=%LOCALAPPDATA%\starchfilm"
set "archive=%cache%\${project.version}-java-%version%.jsa"
if not exist "%archive%" (
  if not exist "%cache%" mkdir "%cache%" 2>nul
  "%java%" "-XX:ArchiveClassesAtExit=%archive%" %quick% -jar "%jar%" compare "%home%formulations\garden" --out - >nul 2>nul
)
if exist "%archive%" set "share=-Xshare:auto "-XX:SharedArchiveFile=%archive%""

:start
"%java%" %share% %quick% -Xlog:all=error:stderr -jar "%jar%" %*
exit /b %ERRORLEVEL%
