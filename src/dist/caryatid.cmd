@echo off
rem Starts Caryatid from the folder it was unpacked into; writes nothing there.
rem Without a command, as by a double click, it opens the window.
setlocal
set "CARYATID_JAVA=java"
if defined JAVA_HOME set "CARYATID_JAVA=%JAVA_HOME%\bin\java.exe"
rem Its own Java, where it came with one.
if exist "%~dp0runtime\bin\java.exe" set "CARYATID_JAVA=%~dp0runtime\bin\java.exe"

"%CARYATID_JAVA%" -version >nul 2>nul
if errorlevel 1 goto nojava

rem Class files of Java 17: an older Java ends here.
"%CARYATID_JAVA%" -cp "%~dp0caryatid.jar" caryatid.cli.Main --version >nul 2>nul
if errorlevel 1 goto oldjava

rem The program writes UTF-8.
for /f "tokens=2 delims=:." %%p in ('chcp') do set "CARYATID_PAGE=%%p"
chcp 65001 >nul

if "%~1"=="" goto window
"%CARYATID_JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Djava.awt.headless=true -jar "%~dp0caryatid.jar" %*
set "CARYATID_ENDED=%errorlevel%"
if defined CARYATID_PAGE chcp %CARYATID_PAGE% >nul
exit /b %CARYATID_ENDED%

:window
"%CARYATID_JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Djava.awt.headless=true -jar "%~dp0caryatid.jar" open
set "CARYATID_ENDED=%errorlevel%"
if not "%CARYATID_ENDED%"=="0" pause
if defined CARYATID_PAGE chcp %CARYATID_PAGE% >nul
exit /b %CARYATID_ENDED%

:nojava
echo Caryatid needs Java 17 or newer, and no Java was found. Install a Java runtime and try again.
if "%~1"=="" pause
exit /b 1

:oldjava
echo Caryatid could not start: Java 17 or newer is needed. "%CARYATID_JAVA%" -version says which one is there.
if "%~1"=="" pause
exit /b 1
