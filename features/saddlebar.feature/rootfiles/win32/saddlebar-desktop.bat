@echo off
rem Saddlebar, desktop. The first argument may be a commission's folder. SADDLEBAR_JAVA names another Java 17 or later.
if not defined SADDLEBAR_JAVA set SADDLEBAR_JAVA=java
for %%f in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do "%SADDLEBAR_JAVA%" -Djava.awt.headless=true "-Dsaddlebar.shared=%~dp0shared" -jar "%%f" -nosplash %*
